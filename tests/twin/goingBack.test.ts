/** Going back by words: what is lived through a second time is not told again. */
import { describe, expect, it } from 'vitest';
import { scenarioById } from '../../src/session/scenario/library';
import { sitDown } from '../../src/twin/sit';

describe('going back', () => {
  it('tells nothing of what came before the moment one goes back to', () => {
    const sitting = sitDown(scenarioById('warm-at-the-lights'), 'practice', 1);
    for (const line of ['begin', 'wear goggles', 'door open', 'engine 900', 'blower 4', 'ac on'])
      expect(sitting.hear(line).taken).toBe(true);
    const first = sitting.hear('run 10 s').lines;
    expect(sitting.hear('wear gloves').taken).toBe(true);
    const told = sitting.hear('rewind 500');
    expect(told.taken).toBe(true);
    const clutch = first.find((line) => /clutch|compressor/i.test(line));
    expect(clutch).toBeDefined();
    expect(told.lines).not.toContain('Goggles on.');
    expect(told.lines.filter((line) => /Put on/.test(line))).toEqual([]);
    expect(told.lines.length).toBeLessThanOrEqual(2);
  });
});
