/** The condition language: closed, typed, compiled once. */
import { describe, expect, it } from 'vitest';
import { type Condition, conditionSchema } from '../../shared/schema/condition';
import type { PlantEvent } from '../../src/plant/commandSpecs';
import { compileCondition } from '../../src/session/conditions/compileCondition';

const signals = [
  { id: 'lowSide.gaugePressurePa', unit: 'Pa', kind: 'truth' },
  { id: 'lowSide.pressurePa', unit: 'Pa', kind: 'truth' },
  { id: 'superheatK', unit: 'K', kind: 'truth' },
  { id: 'vent.temperatureK', unit: 'K', kind: 'truth' },
  { id: 'cap.port-a.on', unit: 'bool', kind: 'control' },
  { id: 'cap.port-b.on', unit: 'bool', kind: 'control' },
  { id: 'engine.rpm', unit: 'rpm', kind: 'cue' },
] as const;
const table = { signals };

function holds(
  condition: Condition,
  values: Record<string, number> = {},
  events: PlantEvent[] = [],
): boolean {
  const numbers = signals.map(({ id }) => values[id] ?? 0);
  return compileCondition(condition, table)({ value: (index) => numbers[index], events });
}
const compile = (condition: Condition) => () => compileCondition(condition, table);

describe('a condition', () => {
  it('compares in SI, whatever unit is written', () => {
    const over = (text: string, pascal: number) =>
      holds({ signal: 'lowSide.gaugePressurePa', over: text }, { 'lowSide.gaugePressurePa': pascal });
    expect(over('32 psi', 220_632)).toBe(false);
    expect(over('32 psi', 220_633)).toBe(true);
    expect(over('2.2 bar', 220_000)).toBe(false);
    expect(holds({ signal: 'vent.temperatureK', under: '15 degC' }, { 'vent.temperatureK': 288.1 })).toBe(
      true,
    );
    expect(holds({ signal: 'superheatK', over: '5 K' }, { superheatK: 5.1 })).toBe(true);
  });

  it('keeps gauge and absolute pressure, temperature and difference apart', () => {
    expect(compile({ signal: 'lowSide.gaugePressurePa', over: '2 bar abs' })).toThrow(
      'lowSide.gaugePressurePa',
    );
    expect(compile({ signal: 'lowSide.pressurePa', over: '2 bar' })).toThrow('abs');
    expect(compile({ signal: 'superheatK', over: '5 degC' })).toThrow('superheatK');
  });

  it('wants a unit where there is one, none where there is none, and on or off for a switch', () => {
    expect(compile({ signal: 'vent.temperatureK', under: 15 })).toThrow('needs a unit');
    expect(compile({ signal: 'engine.rpm', over: '600 rpm' })).toThrow('bare number');
    expect(compile({ signal: 'cap.port-a.on', is: 'yes' })).toThrow('not on or off');
  });

  it('names the nearest signal or event for a slip', () => {
    expect(compile({ signal: 'engine.rmp', over: 0 })).toThrow('did you mean "engine.rpm"?');
    expect(compile({ event: 'couppled' })).toThrow('did you mean "coupled"?');
    expect(compile({ signal: 'hose.*.coupled', is: 'on' })).toThrow('no signal "hose.*.coupled"');
  });

  it('holds for a star when it holds for any', () => {
    const anyOff: Condition = { signal: 'cap.*.on', is: 'off' };
    expect(holds(anyOff, { 'cap.port-a.on': 1, 'cap.port-b.on': 1 })).toBe(false);
    expect(holds(anyOff, { 'cap.port-a.on': 1, 'cap.port-b.on': 0 })).toBe(true);
  });

  it('is false where there is nothing to read, and so is what negates a comparison only by number', () => {
    const nothing = { 'vent.temperatureK': Number.NaN };
    expect(holds({ signal: 'vent.temperatureK', under: '15 degC' }, nothing)).toBe(false);
    expect(holds({ signal: 'vent.temperatureK', over: '15 degC' }, nothing)).toBe(false);
  });

  it('joins with all, any and not', () => {
    const running: Condition = { signal: 'engine.rpm', over: 0 };
    const coupled: Condition = { event: 'coupled', subject: 'charging' };
    const events = [{ id: 'coupled', subject: 'charging' }];
    expect(holds({ all: [running, coupled] }, { 'engine.rpm': 800 }, events)).toBe(true);
    expect(holds({ all: [running, coupled] }, {}, events)).toBe(false);
    expect(holds({ any: [running, coupled] }, {}, events)).toBe(true);
    expect(holds({ all: [{ not: running }, coupled] }, {}, events)).toBe(true);
    expect(holds(coupled, {}, [{ id: 'coupled', subject: 'gauge-low' }])).toBe(false);
  });

  it('has one form', () => {
    const issues = (data: unknown): string[] =>
      conditionSchema
        .safeParse(data)
        .error?.issues.map(({ path, message }) => `${path.join('.')}|${message}`) ?? [];
    expect(issues({ all: [{ signal: 'engine.rpm', over: 0 }, { not: { event: 'coupled' } }] })).toEqual([]);
    expect(issues({ signal: 'engine.rpm', over: 0, under: 3 })[0]).toContain('exactly one');
    expect(issues({ signal: 'engine.rpm' })[0]).toContain('exactly one');
    expect(issues({ whole: [] })[0]).toContain('all, any, not, signal, event');
    expect(issues({ al: [] })).toEqual([expect.stringMatching(/^all\|/), expect.stringContaining('"al"')]);
    expect(issues({ all: [{ signal: 'engine.rpm', ovr: 0 }] })[0]).toMatch(/^all\.0/);
  });
});
