/** What a person perceives: readings, cues and controls, in words; never the truth. */
import { describe, expect, it } from 'vitest';
import { perceive } from '../../src/twin/perceive';
import { sensesOf } from '../../src/twin/senses';
import { say } from '../../src/words/words';
import { connected, feeding, give, oneCore } from '../support/oneJob';

const linesOf = (core: ReturnType<typeof oneCore>): string[] =>
  perceive(core).map(({ message }) => say(message));

describe('what is perceived', () => {
  it('is the same whether the session may show the truth or not', () => {
    const [practice, assessed] = (['practice', 'assessed'] as const).map((mode) => {
      const core = oneCore({ mode });
      give(core, { do: 'begin' }, ...connected, ...feeding);
      core.advance(500);
      return linesOf(core);
    });
    expect(practice).toEqual(assessed);
    expect(practice.length).toBeGreaterThan(10);
  });

  it('leaves out what there is nothing to read on', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    expect(linesOf(core).some((line) => line.startsWith('charging hose gauge'))).toBe(false);
    give(core, ...connected);
    core.advance(1);
    expect(linesOf(core).find((line) => line.startsWith('charging hose gauge'))).toMatch(
      /^charging hose gauge: −(2|3)\d kPa$/,
    );
  });

  it('has no way to a channel of truth', () => {
    const core = oneCore({ mode: 'practice' });
    expect(core.channels.some(({ id }) => id === 'loop.massKg')).toBe(true);
    expect(sensesOf(core).has('loop.massKg')).toBe(false);
    expect(sensesOf(core).value('loop.massKg')).toBeNaN();
  });

  it('tells where a hose lies and what stands on the can', () => {
    const core = oneCore();
    give(core, { do: 'begin' }, ...connected, ...feeding);
    expect(linesOf(core)).toEqual(
      expect.arrayContaining([
        'Goggles on.',
        'Gloves off.',
        'port-b: hose charging on it.',
        'Hose charging: on port-b, coupler open; lies over fender mat.',
        'Can 1: on the mat, tilted 0°, on hose charging, valve 8/16 open.',
      ]),
    );
  });
});
