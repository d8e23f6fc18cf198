import { describe, expect, it } from 'vitest';
import { buildPlant, type HiddenFault, type PlantOptions } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

const SEDAN: PlantOptions = {
  vehicleId: 'sedan',
  refrigerant: 'R-134a',
  chargeKg: 0.72,
  start: 'equalised',
  weather: { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 },
  faults: [],
  bench: { hoses: ['gauge-set'], cans: [] },
  seed: 3,
};

const RUNNING: readonly Command[] = [
  { do: 'windows', to: 'open' },
  { do: 'ac', to: 'on' },
  { do: 'blower', speed: 4 },
  { do: 'engine', rpm: 1500 },
];

function withFaults(...faults: HiddenFault[]): Plant {
  const plant = buildPlant({ ...SEDAN, faults });
  for (const command of RUNNING) expect(plant.apply(command).ok).toBe(true);
  return plant;
}

function run(plant: Plant, seconds: number): string[] {
  const ids: string[] = [];
  for (let i = 0; i < seconds * 50; i++) for (const event of plant.advance()) ids.push(event.id);
  return ids;
}

const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));

describe('a hidden fault', () => {
  it('shows to the eye: a dead fan stands, and a new one turns', () => {
    const plant = withFaults({ id: 'condenser-fan-dead', severity: 1, onsetStep: 0 });
    run(plant, 30);
    expect(value(plant, 'fan.fan.turning')).toBe(0);
    plant.apply({ do: 'engine', rpm: 0 });
    expect(plant.apply({ do: 'replace', part: 'fan' }).ok).toBe(true);
    plant.apply({ do: 'engine', rpm: 1500 });
    run(plant, 30);
    expect(value(plant, 'fan.fan.turning')).toBe(1);
  });

  it('trips the high-pressure switch when the fan is dead and the car stands', () => {
    expect(run(withFaults({ id: 'condenser-fan-dead', severity: 1, onsetStep: 0 }), 300)).toContain(
      'high-pressure-trip',
    );
    expect(run(withFaults(), 300)).not.toContain('high-pressure-trip');
  });

  it('of dirt goes with cleaning, and the loop stays shut', () => {
    const plant = withFaults({ id: 'condenser-air-blocked', severity: 1, onsetStep: 0 });
    run(plant, 40);
    const blocked = value(plant, 'highSide.gaugePressurePa');
    expect(plant.apply({ do: 'clean', part: 'condenser' })).toMatchObject({ reason: 'refusal.engineRuns' });
    plant.apply({ do: 'engine', rpm: 0 });
    expect(plant.apply({ do: 'clean', part: 'condenser' }).ok).toBe(true);
    plant.apply({ do: 'engine', rpm: 1500 });
    run(plant, 40);
    expect(value(plant, 'highSide.gaugePressurePa')).toBeLessThan(blocked - 100_000);
  });

  it('begins at its onset', () => {
    const plant = withFaults({ id: 'clutch-not-engaging', severity: 1, onsetStep: 1000 });
    run(plant, 19);
    expect(value(plant, 'clutch.turning')).toBe(1);
    run(plant, 5);
    expect(value(plant, 'clutch.turning')).toBe(0);
  });

  it('lets refrigerant out at a leak until that part is new, and books what left', () => {
    const plant = withFaults({ id: 'leak', severity: 0.6, onsetStep: 0, site: 'suction' });
    run(plant, 60);
    const gone = plant.books().ventedKg;
    expect(gone).toBeGreaterThan(1e-4);
    plant.apply({ do: 'engine', rpm: 0 });
    expect(plant.apply({ do: 'replace', part: 'suction' })).toMatchObject({ reason: 'refusal.loopShut' });
    const change = (part: string): void => {
      expect(plant.apply({ do: 'open-loop', part }).ok).toBe(true);
      run(plant, 90);
      for (const action of ['replace', 'close-loop'] as const)
        expect(plant.apply({ do: action, part }).ok).toBe(true);
    };
    change('condenser');
    const empty = value(plant, 'vented.leakKg');
    run(plant, 60);
    expect(value(plant, 'vented.leakKg')).toBeGreaterThan(empty);
    change('suction');
    const mended = plant.books().ventedKg;
    run(plant, 10);
    expect(plant.books().ventedKg).toBe(mended);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
  });

  it('is the same car in either order of two', () => {
    const pair: HiddenFault[] = [
      { id: 'condenser-air-blocked', severity: 0.5, onsetStep: 0 },
      { id: 'weak-compressor', severity: 0.4, onsetStep: 0 },
    ];
    const [one, other] = [withFaults(...pair), withFaults(...pair.toReversed())];
    run(one, 40);
    run(other, 40);
    expect(one.stateHash()).toBe(other.stateHash());
  });

  it('is refused where it cannot be, with what is wrong', () => {
    expect(() => withFaults({ id: 'no-such', severity: 1, onsetStep: 0 })).toThrow('no fault "no-such"');
    const both = ['low-charge', 'overcharge'].map((id) => ({ id, severity: 0.5, onsetStep: 0 }));
    expect(() => withFaults(...both)).toThrow('cannot be in one car');
  });

  it('comes back with a snapshot, mended or not', () => {
    const plant = withFaults({ id: 'condenser-fan-dead', severity: 1, onsetStep: 0 });
    run(plant, 10);
    const before = plant.snapshot();
    plant.apply({ do: 'engine', rpm: 0 });
    plant.apply({ do: 'replace', part: 'fan' });
    const mended = plant.snapshot();
    plant.restore(before);
    run(plant, 10);
    expect(value(plant, 'fan.fan.turning')).toBe(0);
    plant.restore(mended);
    plant.apply({ do: 'engine', rpm: 1500 });
    run(plant, 10);
    expect(value(plant, 'fan.fan.turning')).toBe(1);
  });
});

describe('damage to the compressor', () => {
  it('is told with its cause, shows in the truth, and goes with a new compressor', () => {
    const plant = withFaults(
      { id: 'restricted-orifice', severity: 1, onsetStep: 0 },
      { id: 'clutch-stuck-on', severity: 1, onsetStep: 0 },
    );
    const told: string[] = [];
    for (let i = 0; i < 600 * 50; i++)
      for (const { id, subject } of plant.advance())
        if (id === 'compressor-damaged') told.push(String(subject));
    expect(told).toEqual(['vacuum']);
    expect(value(plant, 'compressor.wearRatio')).toBeGreaterThan(0.05);
    expect(value(plant, 'compressor.wearRatio')).toBe(value(plant, 'compressor.wear.vacuumRatio'));
    plant.apply({ do: 'engine', rpm: 0 });
    plant.apply({ do: 'open-loop', part: 'compressor' });
    run(plant, 120);
    expect(plant.apply({ do: 'replace', part: 'compressor' }).ok).toBe(true);
    expect(value(plant, 'compressor.wearRatio')).toBe(0);
  });
});

describe('a clutch', () => {
  it('that slips shows its hub behind the pulley and grows hot', () => {
    const plant = withFaults({ id: 'clutch-slipping', severity: 0.56, onsetStep: 0 });
    run(plant, 300);
    expect(value(plant, 'clutch.hubSpeedRatio')).toBeLessThan(0.8);
    expect(value(plant, 'clutch.faceTemperatureK')).toBeGreaterThan(360);
  });

  it('that is stuck turns with the air conditioning off', () => {
    const plant = withFaults({ id: 'clutch-stuck-on', severity: 1, onsetStep: 0 });
    plant.apply({ do: 'ac', to: 'off' });
    run(plant, 5);
    expect(value(plant, 'clutch.turning')).toBe(1);
    expect(value(plant, 'clutch.hubSpeedRatio')).toBe(1);
  });
});
