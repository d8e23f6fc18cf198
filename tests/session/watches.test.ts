/** Watches: edges, timers, and what may stop the clock. */
import { describe, expect, it } from 'vitest';
import type { Condition } from '../../shared/schema/condition';
import { buildPlant } from '../../src/plant/buildPlant';
import { scenarios } from '../../src/session/scenario/library';
import { plantOptions } from '../../src/session/scenario/plantOptions';
import { watches } from '../../src/session/watches/registry';
import type { WatchSpec } from '../../src/session/watches/watch';
import { watchBank } from '../../src/session/watches/watchBank';

const signals = [
  { id: 'engine.rpm', unit: 'rpm', kind: 'cue' },
  { id: 'scale.massKg', unit: 'kg', kind: 'reading' },
] as const;
const table = { signals };

/** Lets values pass one step each; gives `step:id:edge` for every edge. */
function edges(spec: WatchSpec, values: readonly (readonly [rpm: number, kg: number])[]): string[] {
  const bank = watchBank([spec], table);
  return values.flatMap((value, step) =>
    bank
      .look({ value: (index) => value[index], events: [] }, true)
      .map(({ id, to }) => `${step}:${id}:${to}`),
  );
}
const rpm = (...values: number[]): (readonly [number, number])[] => values.map((value) => [value, 0]);

describe('a watch', () => {
  const running: Condition = { signal: 'engine.rpm', over: 0 };

  it('tells its rising and falling edges and nothing between', () => {
    expect(edges({ id: 'w', when: running }, rpm(0, 800, 900, 0, 0, 800))).toEqual([
      '1:w:rise',
      '3:w:fall',
      '5:w:rise',
    ]);
  });

  it('with a time counts steps without a break', () => {
    const held = { id: 'w', when: running, heldS: 0.06 };
    expect(edges(held, rpm(800, 800, 0, 800, 800, 800, 800, 0))).toEqual(['5:w:rise', '7:w:fall']);
  });

  it('of rest waits until a reading has stayed near where it was', () => {
    const rest = { id: 'w', rest: 'scale.massKg', within: 0.01, heldS: 0.04 };
    const kg = (...values: number[]): (readonly [number, number])[] => values.map((value) => [0, value]);
    expect(edges(rest, kg(0.5, 0.505, 0.495, 0.52, 0.52, 0.52, Number.NaN))).toEqual([
      '2:w:rise',
      '3:w:fall',
      '5:w:rise',
      '6:w:fall',
    ]);
  });

  it('does not count a command as a step', () => {
    const bank = watchBank([{ id: 'w', when: running, heldS: 0.04 }], table);
    const moment = { value: () => 800, events: [] };
    expect(bank.look(moment, true)).toEqual([]);
    expect(bank.look(moment, false)).toEqual([]);
    expect(bank.look(moment, false)).toEqual([]);
    expect(bank.look(moment, true)).toMatchObject([{ to: 'rise' }]);
  });

  it('goes back to where it stood', () => {
    const bank = watchBank([{ id: 'w', when: running, heldS: 0.06 }], table);
    const moment = { value: () => 800, events: [] };
    bank.look(moment, true);
    const before = bank.snapshot();
    bank.look(moment, true);
    bank.restore(before);
    expect(bank.look(moment, true)).toEqual([]);
    expect(bank.look(moment, true)).toMatchObject([{ id: 'w', to: 'rise' }]);
  });
});

/** Signals a condition looks at, stars left as they are. */
function signalsOf(condition: Condition): string[] {
  if ('all' in condition) return condition.all.flatMap(signalsOf);
  if ('any' in condition) return condition.any.flatMap(signalsOf);
  if ('not' in condition) return signalsOf(condition.not);
  return 'signal' in condition ? [condition.signal] : [];
}

describe('the registry', () => {
  it('stops the clock only for what a person would see or hear', () => {
    const plants = scenarios.map(({ data }) => buildPlant(plantOptions(data, 1)));
    const truth = new Set(
      plants.flatMap((plant) => plant.signals.filter(({ kind }) => kind === 'truth').map(({ id }) => id)),
    );
    const specs: readonly WatchSpec[] = watches;
    for (const spec of specs.filter(({ notable }) => notable !== undefined)) {
      const named = 'rest' in spec ? [spec.rest] : signalsOf(spec.when);
      expect(
        named.filter((id) => truth.has(id)),
        spec.id,
      ).toEqual([]);
    }
  });

  it('has each id once', () => {
    const ids = watches.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
