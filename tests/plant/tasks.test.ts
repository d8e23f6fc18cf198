/** Tasks round the service: findings and sums against the car and the bench, temperature, cans with oil, what is told. */
import { describe, expect, it } from 'vitest';
import type { CanSpec } from '../../src/equipment/cans';
import type { Command } from '../../src/plant/commandSpecs';
import type { Plant } from '../../src/plant/plantPort';
import { type ServiceBench, serviceBench } from '../support/serviceBench';

const CAN: CanSpec = {
  id: 'can-1',
  netKg: 0.28,
  printedTotalKg: 0.34,
  tareKg: 0.11,
  oilKg: 0.04,
  dyeKg: 0.004,
  sealerKg: 0.015,
};
const twoCans = [CAN, { ...CAN, id: 'can-2' }];

/** 1 right, 0 wrong, or the reason of a refusal. */
function judged(plant: Plant, command: Command): number | string {
  const outcome = plant.apply(command);
  return outcome.ok ? (outcome.events[0].quantity ?? Number.NaN) : outcome.reason;
}
const sum = (of: string, amount: number): Command => ({ do: 'sum', of, amount });

describe('what is written down of a car', () => {
  it('is judged by what the car is', () => {
    const { plant } = serviceBench('sedan', 25);
    expect(judged(plant, { do: 'note-loop', kind: 'orifice-tube' })).toBe(1);
    expect(judged(plant, { do: 'note-loop', kind: 'expansion-valve' })).toBe(0);
    expect(judged(plant, { do: 'note-clutch', doing: 'standing' })).toBe(1);
    expect(judged(plant, { do: 'note-clutch', doing: 'turning' })).toBe(0);
  });

  it('takes a refrigerant by what is in the loop, and not to know only where nothing could tell', () => {
    const gas = (name: string): Command => ({ do: 'note-gas', gas: name });
    const mixed = serviceBench('hatchback', 25, {
      faults: [{ id: 'mixed-refrigerant', severity: 0.6, onsetStep: 0 }],
    });
    const written = (): (number | string)[] =>
      ['R-134a', 'mixed', 'unknown'].map((name) => judged(mixed.plant, gas(name)));
    // an identifier lies there, and nobody has asked it
    expect(written()).toEqual([0, 0, 0]);
    mixed.give({ do: 'cap', port: 'port-b', to: 'off' }, { do: 'identify', port: 'port-b' });
    mixed.run(240);
    expect(written()).toEqual([0, 1, 0]);
    const bench = { hoses: ['gauge-set' as const], cans: [], tools: [] };
    const pure = serviceBench('hatchback', 25, { bench }).plant;
    expect(['R-134a', 'mixed', 'unknown'].map((name) => judged(pure, gas(name)))).toEqual([1, 0, 1]);
  });

  it('tells a clutch that turns from one that stands', () => {
    const bench = serviceBench('hatchback', 30);
    bench.give(
      { do: 'windows', to: 'open' },
      { do: 'blower', speed: 4 },
      { do: 'engine', rpm: 1500 },
      { do: 'ac', to: 'on' },
    );
    bench.run(5);
    expect(judged(bench.plant, { do: 'note-clutch', doing: 'turning' })).toBe(1);
    expect(judged(bench.plant, { do: 'note-clutch', doing: 'slipping' })).toBe(0);
  });
});

describe('sums', () => {
  // hatchback: 480 ± 20 g. A charging hose of 0.6 m by 4.8 mm is 10.9 mL: at 25 °C 0.35 g of vapour, 13 g of liquid.
  const { plant } = serviceBench('hatchback', 25, {
    bench: { hoses: ['charging'], cans: twoCans, tools: [] },
  });

  it('come out by label, net contents, cans and remainder', () => {
    expect(judged(plant, sum('charge', 480))).toBe(1);
    expect(judged(plant, sum('charge', 560))).toBe(0);
    expect(judged(plant, sum('net', 280))).toBe(1);
    expect(judged(plant, sum('net', 340))).toBe(0);
    expect(judged(plant, sum('cans', 2))).toBe(1);
    expect(judged(plant, sum('cans', 1))).toBe(0);
    expect(judged(plant, sum('remainder', 80))).toBe(1);
    expect(judged(plant, sum('remainder', 200))).toBe(0);
  });

  it('count the hose full of gas, and of liquid where a can stands upside down', () => {
    expect(judged(plant, sum('hose', 0))).toBe(1);
    expect(judged(plant, sum('hose', 13))).toBe(0);
    plant.apply({ do: 'tilt', can: 'can-1', degrees: 180 });
    expect(judged(plant, sum('hose', 13))).toBe(1);
    expect(judged(plant, sum('hose', 0))).toBe(0);
  });

  it('say so where there is nothing to reckon from', () => {
    const bare = serviceBench('hatchback', 25, { bench: { hoses: ['charging'], cans: [], tools: [] } }).plant;
    expect(judged(bare, sum('cans', 2))).toBe('refusal.nothingToSum');
  });
});

describe('the temperature control', () => {
  /** Vent after two minutes of a hot engine. */
  function ventK(temperature: 'coldest' | 'middle' | 'warmest'): number {
    const bench = serviceBench('hatchback', 30, { found: { temperature } });
    bench.give(
      { do: 'windows', to: 'open' },
      { do: 'air', to: 'recirculated' },
      { do: 'blower', speed: 4 },
      { do: 'engine', rpm: 1500 },
      { do: 'ac', to: 'on' },
    );
    bench.run(120);
    return bench.value('vent.temperatureK');
  }

  it('sends air past the heater unless it is at coldest', () => {
    const [coldest, middle, warmest] = (['coldest', 'middle', 'warmest'] as const).map(ventK);
    expect(middle).toBeGreaterThan(coldest + 3);
    expect(warmest).toBeGreaterThan(middle + 3);
  });

  it('is part of the conditions that a test is held under', () => {
    const bench = serviceBench('hatchback', 30);
    bench.give(
      { do: 'windows', to: 'open' },
      { do: 'air', to: 'recirculated' },
      { do: 'blower', speed: 4 },
      { do: 'engine', rpm: 1500 },
      { do: 'ac', to: 'on' },
    );
    bench.run(6);
    // ten minutes are asked for
    expect(bench.value('test.heldRatio')).toBeCloseTo(0.01, 3);
    bench.give({ do: 'temperature', to: 'middle' });
    expect(bench.value('test.heldRatio')).toBe(0);
  });
});

describe('a can with oil, dye and sealer in it', () => {
  /** After half a minute into an evacuated car. */
  function emptied(degrees: number): ServiceBench {
    const bench = serviceBench('hatchback', 25, {
      start: 'evacuated',
      chargeKg: 0,
      bench: { hoses: ['charging'], cans: [CAN], tools: [] },
    });
    if (degrees > 0) bench.give({ do: 'tilt', can: 'can-1', degrees });
    bench.give(
      { do: 'tap', can: 'can-1', onto: 'charging' },
      { do: 'cap', port: 'port-b', to: 'off' },
      { do: 'couple', hose: 'charging', port: 'port-b', route: '' },
      { do: 'coupler', hose: 'charging', to: 'open' },
      { do: 'can-valve', can: 'can-1', turn: 16 },
    );
    bench.run(40);
    return bench;
  }

  it('leaves them behind when it is held upright, and gives them with its liquid upside down', () => {
    const [upright, inverted] = [emptied(0), emptied(180)];
    const gone = (bench: ServiceBench): number => 0.044 - bench.value('can.can-1.oilKg');
    const gas = (bench: ServiceBench): number => 0.28 - bench.value('can.can-1.netKg');
    expect(gas(upright)).toBeGreaterThan(0.02);
    expect(gone(upright) / 0.044).toBeLessThan(0.1 * (gas(upright) / 0.28));
    expect(gone(inverted) / 0.044).toBeGreaterThan(0.5 * (gas(inverted) / 0.28));
    expect(inverted.value('sealer.fromCansKg')).toBeGreaterThan(0.003);
    expect(upright.value('sealer.fromCansKg')).toBeLessThan(0.0005);
    // a can's oil is a polyglycol, and the book holds as much more of it
    expect(inverted.value('oil.fromCansKg')).toBeCloseTo(gone(inverted), 6);
    expect(inverted.value('oil.wrongRatio')).toBe(0);
    // a share of that is dye
    expect(inverted.value('dye.inLoopKg')).toBeCloseTo((gone(inverted) * 0.004) / 0.044, 4);
    for (const { plant } of [upright, inverted]) expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
  });

  it('is marked and put away, and taken out again by using it', () => {
    const bench = emptied(0);
    const store: Command = { do: 'store-can', can: 'can-1' };
    expect(bench.plant.apply(store)).toMatchObject({ ok: false, reason: 'refusal.canOnHose' });
    bench.give({ do: 'untap', can: 'can-1' }, { do: 'mark-can', can: 'can-1', grams: 250 }, store);
    expect(bench.value('can.can-1.stored')).toBe(1);
    expect(bench.value('can.can-1.markedKg')).toBe(0.25);
    bench.give({ do: 'tap', can: 'can-1', onto: 'charging' });
    expect(bench.value('can.can-1.stored')).toBe(0);
  });
});

describe('what is still wrong', () => {
  it('is nothing in a sound car; its charge is proven only after the loop was empty', () => {
    const sound = serviceBench('hatchback', 25);
    expect(sound.value('faults.remainingCount')).toBe(0);
    expect(sound.value('charge.proven')).toBe(0);
    const short = serviceBench('hatchback', 25, { chargeKg: 0.3 });
    expect(short.value('faults.remainingCount')).toBe(1);
  });

  it('takes a scale that was read, besides an empty loop and the right amount in it now', () => {
    const bench = serviceBench('hatchback', 25, { bench: { hoses: [], cans: [CAN], tools: [] } });
    const readScale = (): number => {
      bench.give({ do: 'note-reading', channel: 'scale' });
      return bench.value('charge.proven');
    };
    bench.give({ do: 'place', can: 'can-1', at: 'scale' });
    bench.run(3);
    expect(readScale()).toBe(0);
    bench.parts.desk.tasks.wasEmpty = true;
    expect(bench.value('charge.proven')).toBe(0);
    expect(readScale()).toBe(1);
  });

  it('counts a fault until its part is new', () => {
    const bench = serviceBench('hatchback', 25, {
      faults: [{ id: 'condenser-fan-dead', severity: 1, onsetStep: 0 }],
    });
    expect(bench.value('faults.remainingCount')).toBe(1);
    bench.give({ do: 'replace', part: 'fan' });
    expect(bench.value('faults.remainingCount')).toBe(0);
  });
});
