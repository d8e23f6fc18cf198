/** One log, however it is played, gives one state. */
import { describe, expect, it } from 'vitest';
import type { SessionCore } from '../../src/session/corePort';
import { connected, feeding, give, oneCore } from '../support/oneJob';

/** A short job: connect, feed for a minute, shut, start the engine, note a reading. */
function play(core: SessionCore, run: (core: SessionCore, steps: number) => void): void {
  give(core, { do: 'begin' });
  run(core, 137);
  give(core, ...connected, ...feeding);
  run(core, 3000);
  give(core, { do: 'can-valve', can: 'can-1', turn: 0 }, { do: 'engine', rpm: 1500 }, { do: 'ac', to: 'on' });
  run(core, 4501);
  give(core, { do: 'note-reading', channel: 'charging-gauge' }, { do: 'finish' });
}
const inOneGo = (core: SessionCore, steps: number): void => {
  core.advance(steps);
};
const inChunksOf = (chunk: number) => (core: SessionCore, steps: number) => {
  for (let left = steps; left > 0; left -= chunk) core.advance(Math.min(chunk, left));
};

describe('a log', () => {
  const whole = oneCore();
  play(whole, inOneGo);

  it.each([1, 7, 1000])('gives the same hashes when the clock runs in chunks of %i steps', (chunk) => {
    const core = oneCore();
    play(core, inChunksOf(chunk));
    expect(core.logHash()).toBe(whole.logHash());
    expect(core.stateHash()).toBe(whole.stateHash());
  });

  it('gives the same hashes when the session is cut off and resumed at twenty steps', () => {
    let core = oneCore();
    const cut = (old: SessionCore, steps: number): void => {
      for (let left = steps; left > 0; left -= 380) {
        core.advance(Math.min(380, left));
        const resumed = oneCore({ log: structuredClone(core.log()) });
        expect(resumed.stateHash()).toBe(core.stateHash());
        expect(resumed.view().card).toEqual(core.view().card);
        core = resumed;
      }
      expect(old.mode).toBe('practice');
    };
    give(core, { do: 'begin' });
    cut(core, 137);
    give(core, ...connected, ...feeding);
    cut(core, 3000);
    give(
      core,
      { do: 'can-valve', can: 'can-1', turn: 0 },
      { do: 'engine', rpm: 1500 },
      { do: 'ac', to: 'on' },
    );
    cut(core, 4501);
    give(core, { do: 'note-reading', channel: 'charging-gauge' }, { do: 'finish' });
    expect(core.stateHash()).toBe(whole.stateHash());
    expect(core.logHash()).toBe(whole.logHash());
  });

  it('has another hash when one command is given one step later', () => {
    const core = oneCore();
    play(core, (late, steps) => {
      late.advance(steps === 3000 ? 3001 : steps);
    });
    expect(core.logHash()).not.toBe(whole.logHash());
    expect(core.stateHash()).not.toBe(whole.stateHash());
  });

  it('takes an error of an instrument from the seed and from nothing else', () => {
    const other = oneCore({ seed: 2 });
    play(other, inOneGo);
    expect(other.view().card.at(-1)?.value).not.toBe(whole.view().card.at(-1)?.value);
    expect(other.stateHash()).toBe(whole.stateHash());
  });
});
