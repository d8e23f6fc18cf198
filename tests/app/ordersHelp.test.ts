/** What the written line lists, and what it says to a line that is no order. */
import { describe, expect, it } from 'vitest';
import { ordersFor, unreadWords } from '../../src/app/ordersHelp';
import { commandSpecs } from '../../src/plant/commandSpecs';
import { openSession } from '../../src/session/openSession';
import { readWords } from '../../src/session/plan/planWords';
import { scenarioById } from '../../src/session/scenario/library';

const { choices } = openSession(scenarioById('weighed-in'), { mode: 'practice', seed: 1 });

function answer(line: string): string {
  const reading = readWords(line);
  if (!('problem' in reading)) throw new RangeError(line);
  return unreadWords(line, reading.problem, choices);
}

describe('the written line', () => {
  it('lists every order of which something can be named, each with what it takes and does', () => {
    const orders = ordersFor(choices);
    const named = orders.map(({ line }) => line.split(' ')[0]);
    expect(named).toContain('wear');
    expect(named).not.toContain('attach');
    expect(named.filter((name) => !Object.hasOwn(commandSpecs, name))).toEqual([]);
    expect(orders.find(({ line }) => line.startsWith('wear'))?.line).toBe(
      'wear <goggles | gloves | overall>',
    );
    expect(orders.filter(({ does }) => does === '' || /[{}]/.test(does))).toEqual([]);
  });

  it('names the nearest order as it is typed, and where all of them stand', () => {
    expect(answer('waer goggles')).toContain('"wear"');
    expect(answer('blowr 4')).toContain('"blower"');
    expect(answer('gafas')).toMatch(/Write help/);
  });

  it('says how an order is written that lacks something, long choices by name', () => {
    expect(answer('wear')).toContain('wear <goggles | gloves | overall>');
    expect(answer('diagnose')).toContain('diagnose <cause> <');
  });
});
