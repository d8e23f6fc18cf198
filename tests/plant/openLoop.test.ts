/** Undoing the loop: what leaves is booked by its cause, air and water come in, a part takes its oil along. */
import { describe, expect, it } from 'vitest';
import { assemblePlant } from '../../src/plant/assemblePlant';
import { buildPlant, type PlantOptions } from '../../src/plant/buildPlant';
import type { Command, PlantEvent } from '../../src/plant/commandSpecs';
import { makeExecutive } from '../../src/plant/executive';
import type { Plant } from '../../src/plant/plantPort';

const HATCHBACK: PlantOptions = {
  vehicleId: 'hatchback',
  refrigerant: 'R-134a',
  chargeKg: 0.48,
  start: 'equalised',
  weather: { temperatureK: 298.15, relativeHumidity: 0.6, pressurePa: 101_325 },
  faults: [],
  bench: { hoses: ['charging'], cans: [] },
  seed: 2,
};

const CAN = { id: 'can-1', netKg: 0.34, printedTotalKg: 0.37, tareKg: 0.1 };

function run(plant: Plant, seconds: number): void {
  for (let i = 0; i < seconds * 50; i++) plant.advance();
}

function give(plant: Plant, ...commands: Command[]): PlantEvent[] {
  return commands.flatMap((command) => {
    const outcome = plant.apply(command);
    if (!outcome.ok) throw new Error(`${command.do}: ${outcome.reason}`);
    return outcome.events;
  });
}

const value = (plant: Plant, id: string): number => plant.value(plant.signalIndex(id));

describe('a full loop undone', () => {
  it('blows out its charge, which is booked to the joint, with its warming', () => {
    const plant = buildPlant(HATCHBACK);
    const events = give(plant, { do: 'open-loop', part: 'drier' });
    expect(events.map(({ id }) => id)).toEqual([
      ...['loop-opened', 'opened-under-pressure'],
      // bare hands and eyes are in the way of what comes
      ...['cold-on-skin', 'cold-in-eye'],
    ]);
    run(plant, 120);
    const opened = value(plant, 'vented.openedKg');
    expect(opened).toBeGreaterThan(0.3);
    expect(opened).toBeCloseTo(plant.books().ventedKg, 9);
    // GWP of R-134a, 1,430: IPCC, fourth assessment report
    expect(value(plant, 'vented.co2Kg')).toBeCloseTo(1430 * plant.books().ventedKg, 6);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
    expect(plant.books().energyErrorRelative).toBeLessThan(1e-10);
  });
});

describe('a part of a full loop', () => {
  it('is not changed while a joint of it blows, on either side, and what left is booked', () => {
    const plant = buildPlant(HATCHBACK);
    give(plant, { do: 'open-loop', part: 'compressor' });
    const change = (): unknown => plant.apply({ do: 'replace', part: 'compressor' });
    expect(change()).toMatchObject({ reason: 'refusal.loopBlows' });
    run(plant, 5);
    expect(change()).toMatchObject({ reason: 'refusal.loopBlows' });
    run(plant, 60);
    expect(change()).toMatchObject({ ok: true });
    // what stays is cold liquid in the bottle and what oil holds, boiling off
    expect(value(plant, 'loop.massKg')).toBeLessThan(0.1);
    expect(value(plant, 'vented.openedKg')).toBeGreaterThan(0.38);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
  });
});

describe('a mixed loop undone', () => {
  it('has both fluids in the books', () => {
    const plant = buildPlant({
      ...HATCHBACK,
      faults: [{ id: 'mixed-refrigerant', severity: 0.5, onsetStep: 0 }],
    });
    const held = plant.books().refrigerantKg;
    give(plant, { do: 'open-loop', part: 'drier' });
    run(plant, 20);
    const { ventedKg, refrigerantKg } = plant.books();
    expect(ventedKg).toBeCloseTo(value(plant, 'vented.kg'), 12);
    expect(ventedKg + refrigerantKg).toBeCloseTo(held, 9);
    expect(ventedKg).toBeGreaterThan(value(plant, 'vented.openedKg') - 1e-9);
  });
});

describe('an empty loop undone', () => {
  const EMPTY: PlantOptions = { ...HATCHBACK, chargeKg: 0, start: 'evacuated' };
  const evacuated = (): Plant => buildPlant(EMPTY);

  it('fills with air at once, and with water by the hour', () => {
    const parts = assemblePlant(EMPTY);
    const plant = makeExecutive(parts);
    give(plant, { do: 'open-loop', part: 'drier' });
    run(plant, 30);
    expect(value(plant, 'highSide.pressurePa')).toBeGreaterThan(95_000);
    const { network, loop } = parts.car;
    const water = (): number => network.massKg(loop.high, 'water') + network.massKg(loop.low, 'water');
    const soon = water();
    run(plant, 180);
    // 60 % damp at 25 °C is 0.014 kg of water in a cubic metre
    expect((water() - soon) / 180).toBeGreaterThan(1e-8);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
    give(plant, { do: 'close-loop', part: 'drier' });
  });

  it('is undone before a part of it is changed, with the engine off, and the part takes its oil along', () => {
    const parts = assemblePlant(EMPTY);
    const plant = makeExecutive(parts);
    expect(plant.apply({ do: 'replace', part: 'drier' })).toMatchObject({ reason: 'refusal.loopShut' });
    give(plant, { do: 'engine', rpm: 900 });
    expect(plant.apply({ do: 'open-loop', part: 'drier' })).toMatchObject({ reason: 'refusal.engineRuns' });
    give(plant, { do: 'engine', rpm: 0 }, { do: 'open-loop', part: 'compressor' });
    expect(plant.apply({ do: 'replace', part: 'compressor' })).toMatchObject({ reason: 'refusal.loopDraws' });
    run(plant, 60);
    const { network, loop } = parts.car;
    const onWalls = (): number => network.massKg(loop.low, 'oil') - network.sumpOilKg(loop.low);
    const [stoodKg, wallsKg] = [network.sumpOilKg(loop.low), onWalls()];
    const oil = give(plant, { do: 'replace', part: 'compressor' }).find(({ id }) => id === 'oil-in-part');
    expect(stoodKg).toBeGreaterThan(0.05);
    expect(oil?.quantity).toBeCloseTo(stoodKg, 12);
    expect(network.sumpOilKg(loop.low)).toBe(0);
    expect(onWalls()).toBeCloseTo(wallsKg, 12);
    give(plant, { do: 'open-loop', part: 'evaporator' }, { do: 'replace', part: 'evaporator' });
    expect(onWalls()).toBeLessThan(wallsKg);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
    expect(plant.apply({ do: 'replace', part: 'fan' }).ok).toBe(true);
  });

  it('comes back from a snapshot with its joints undone', () => {
    const plant = evacuated();
    give(plant, { do: 'open-loop', part: 'drier' });
    run(plant, 5);
    const kept = plant.snapshot();
    run(plant, 30);
    const hash = plant.stateHash();
    plant.restore(kept);
    run(plant, 30);
    expect(plant.stateHash()).toBe(hash);
  });
});

describe('what got to the air', () => {
  it('is told by its cause: a hose let go sprays, an end cracked purges', () => {
    const plant = buildPlant(HATCHBACK);
    const port = 'port-b';
    give(plant, { do: 'cap', port, to: 'off' }, { do: 'couple', hose: 'charging', port, route: '' });
    give(plant, { do: 'coupler', hose: 'charging', to: 'open' });
    run(plant, 5);
    give(plant, { do: 'purge', hose: 'charging', to: 'open' });
    run(plant, 3);
    give(plant, { do: 'purge', hose: 'charging', to: 'shut' }, { do: 'uncouple', hose: 'charging' });
    run(plant, 5);
    const [purged, sprayed] = [value(plant, 'vented.purgeKg'), value(plant, 'vented.sprayKg')];
    expect(purged).toBeGreaterThan(1e-4);
    expect(sprayed).toBeGreaterThan(1e-5);
    expect(purged + sprayed).toBeCloseTo(plant.books().ventedKg, 12);
    expect(value(plant, 'vented.otherKg')).toBeCloseTo(0, 12);
  });

  it('leaves the middle hose too, cracked at the can it is screwed on to', () => {
    const plant = buildPlant({ ...HATCHBACK, bench: { hoses: ['gauge-set'], cans: [CAN] } });
    give(plant, { do: 'tap', can: 'can-1', onto: 'utility' }, { do: 'can-valve', can: 'can-1', turn: 2 });
    run(plant, 2);
    give(plant, { do: 'purge', hose: 'utility', to: 'open' });
    run(plant, 3);
    give(plant, { do: 'purge', hose: 'utility', to: 'shut' });
    expect(value(plant, 'vented.purgeKg')).toBeGreaterThan(1e-4);
  });
});
