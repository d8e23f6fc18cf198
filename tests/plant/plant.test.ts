import { describe, expect, it } from 'vitest';
import { buildPlant, type PlantOptions } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';

const WARM_DAY = { temperatureK: 305.15, relativeHumidity: 0.5, pressurePa: 101_325 };
const HATCH: PlantOptions = {
  vehicleId: 'hatchback',
  refrigerant: 'R-134a',
  chargeKg: 0.48,
  start: 'equalised',
  weather: WARM_DAY,
  faults: [],
  bench: {
    hoses: ['charging', 'gauge-set'],
    cans: [{ id: 'can-1', netKg: 0.34, printedTotalKg: 0.37, tareKg: 0.1 }],
  },
  seed: 7,
};

function value(plant: Plant, id: string): number {
  return plant.value(plant.signalIndex(id));
}

function run(plant: Plant, seconds: number): string[] {
  const ids: string[] = [];
  for (let i = 0; i < seconds * 50; i++) for (const event of plant.advance()) ids.push(event.id);
  return ids;
}

function give(plant: Plant, ...commands: Command[]): string[] {
  return commands.flatMap((command) => {
    const outcome = plant.apply(command);
    if (!outcome.ok) throw new Error(`${command.do}: ${outcome.reason} ${JSON.stringify(outcome.params)}`);
    return outcome.events.map(({ id, subject }) => (subject ? `${id}:${subject}` : id));
  });
}

/** Port ids by what they are, asked of the plant itself: the smaller fitting is the low side. */
const LOW = 'port-b';
const HIGH = 'port-a';

const onto = (hose: string, port: string): Command[] => [
  { do: 'cap', port, to: 'off' },
  { do: 'couple', hose, port, route: 'side-middle,fender,mat' },
  { do: 'coupler', hose, to: 'open' },
];

const running: Command[] = [
  { do: 'windows', to: 'open' },
  { do: 'ac', to: 'on' },
  { do: 'blower', speed: 4 },
  { do: 'engine', rpm: 1500 },
];

describe('a car with a gauge set on it', () => {
  it('reads saturation for the day on both gauges while it stands', () => {
    const plant = buildPlant(HATCH);
    give(plant, ...onto('gauge-low', LOW), ...onto('gauge-high', HIGH));
    run(plant, 60);
    const low = value(plant, 'lowGauge.gaugePressurePa');
    const high = value(plant, 'highGauge.gaugePressurePa');
    // R-134a at 32 °C: 815 kPa absolute (Tillner-Roth and Baehr 1994), 714 kPa gauge.
    expect(Math.abs(low - 714_000)).toBeLessThan(20_000);
    expect(Math.abs(high - 714_000)).toBeLessThan(50_000);
  });

  it('parts into a low and a high side once the engine runs, and the books hold', () => {
    const plant = buildPlant(HATCH);
    give(plant, ...onto('gauge-low', LOW), ...onto('gauge-high', HIGH), ...running);
    const events = run(plant, 300);
    expect(events).toContain('clutch-in');
    expect(value(plant, 'highGauge.gaugePressurePa')).toBeGreaterThan(1_000_000);
    expect(value(plant, 'lowGauge.gaugePressurePa')).toBeLessThan(450_000);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
    expect(plant.books().energyErrorRelative).toBeLessThan(1e-10);
  });

  it('tells the instant an open can leads to the high side, whatever the pressure', () => {
    const plant = buildPlant(HATCH);
    give(plant, ...onto('gauge-high', HIGH), { do: 'tap', can: 'can-1', onto: 'utility' });
    expect(give(plant, { do: 'can-valve', can: 'can-1', turn: 4 })).not.toContain('can-open-to:high');
    expect(give(plant, { do: 'manifold', side: 'high', turn: 1 })).toContain('can-open-to:high');
  });
});

describe('an evacuated car', () => {
  it('takes in what the scale misses, and nothing is lost', () => {
    const plant = buildPlant({ ...HATCH, start: 'evacuated' });
    give(plant, ...onto('charging', LOW), { do: 'tap', can: 'can-1', onto: 'charging' });
    give(plant, { do: 'place', can: 'can-1', at: 'scale' });
    run(plant, 5);
    const before = value(plant, 'scale.massKg');
    expect(value(plant, 'chargingGauge.gaugePressurePa')).toBeLessThan(-60_000);
    give(plant, { do: 'can-valve', can: 'can-1', turn: 16 });
    run(plant, 60);
    const missing = before - value(plant, 'scale.massKg');
    expect(missing).toBeGreaterThan(0.02);
    expect(Math.abs(missing - value(plant, 'loop.massKg'))).toBeLessThan(0.004);
    expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
  });
});

describe('a hose led through the fan', () => {
  it('is caught when the fan turns, and spills what it holds', () => {
    const plant = buildPlant(HATCH);
    give(plant, { do: 'cap', port: LOW, to: 'off' });
    give(plant, {
      do: 'couple',
      hose: 'charging',
      port: LOW,
      route: 'side-middle,corner-front,fan,nose,fender',
    });
    give(plant, { do: 'coupler', hose: 'charging', to: 'open' });
    expect(run(plant, 5)).not.toContain('hose-caught');
    give(plant, ...running);
    expect(run(plant, 5)).toContain('hose-caught');
    expect(value(plant, 'hose.charging.caught')).toBe(1);
    expect(plant.books().ventedKg).toBeGreaterThan(1e-5);
  });
});

describe('a coupler on the wrong fitting', () => {
  it('does not go on and leaves nothing changed', () => {
    const plant = buildPlant(HATCH);
    give(plant, { do: 'cap', port: HIGH, to: 'off' });
    const before = plant.stateHash();
    const outcome = plant.apply({ do: 'couple', hose: 'charging', port: HIGH, route: '' });
    expect(outcome).toMatchObject({ ok: false, reason: 'refusal.fit.too-narrow' });
    expect(plant.stateHash()).toBe(before);
  });
});

describe('a snapshot', () => {
  it('brings back the same plant to the last bit, hoses and open valves included', () => {
    const plant = buildPlant(HATCH);
    give(plant, ...onto('charging', LOW), { do: 'tap', can: 'can-1', onto: 'charging' }, ...running);
    run(plant, 20);
    const kept = plant.snapshot();
    give(plant, { do: 'can-valve', can: 'can-1', turn: 8 });
    run(plant, 20);
    const there = plant.stateHash();
    plant.restore(kept);
    give(plant, { do: 'can-valve', can: 'can-1', turn: 8 });
    run(plant, 20);
    expect(plant.stateHash()).toBe(there);
    const other = buildPlant(HATCH);
    other.restore(kept);
    give(other, { do: 'can-valve', can: 'can-1', turn: 8 });
    run(other, 20);
    expect(other.stateHash()).toBe(there);
  });
});

describe('a snapshot after a hose was torn off a core that weeps', () => {
  it('goes on as the plant did: the core weeps from the step the hose went', () => {
    const faults = [{ id: 'leak-core', severity: 0.9, onsetStep: 0, site: LOW }];
    const plant = buildPlant({ ...HATCH, faults });
    const route = 'side-middle,belt,side-middle,fender,mat';
    give(plant, { do: 'cap', port: LOW, to: 'off' }, { do: 'couple', hose: 'charging', port: LOW, route });
    give(plant, { do: 'engine', rpm: 900 });
    expect(run(plant, 0.52)).toContain('hose-caught');
    const kept = plant.snapshot();
    run(plant, 0.2);
    const hash = plant.stateHash();
    plant.restore(kept);
    run(plant, 0.2);
    expect(plant.stateHash()).toBe(hash);
  });
});

describe('a cue', () => {
  it('is no thermometer: frost, dew and level come in eighths', () => {
    const plant = buildPlant(HATCH);
    give(plant, ...onto('charging', LOW), { do: 'tap', can: 'can-1', onto: 'charging' }, ...running);
    give(plant, { do: 'can-valve', can: 'can-1', turn: 16 });
    const seen = new Set<number>();
    for (let second = 0; second < 120; second++) {
      run(plant, 1);
      for (const { id, kind } of plant.signals)
        if (kind === 'cue' && id !== 'engine.rpm') seen.add(value(plant, id));
    }
    expect(seen.size).toBeGreaterThan(3);
    for (const share of seen) expect(8 * share).toBe(Math.round(8 * share));
  });
});

describe('the way a hose is led', () => {
  it('is the usual one where none is said, and refused where no hose could lie so', () => {
    const plant = buildPlant(HATCH);
    give(plant, { do: 'cap', port: LOW, to: 'off' });
    expect(plant.apply({ do: 'couple', hose: 'charging', port: LOW, route: 'mat' })).toMatchObject({
      ok: false,
      reason: 'refusal.noWay',
    });
    expect(give(plant, { do: 'couple', hose: 'charging', port: LOW, route: '' })).toContain(
      'coupled:charging',
    );
  });
});
