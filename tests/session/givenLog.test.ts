/** A log that is handed in is run as it is or not at all. */
import { describe, expect, it } from 'vitest';
import type { SessionLog } from '../../src/session/corePort';
import { BrokenLogError, OtherLogError } from '../../src/session/logProblem';
import { connected, feeding, give, oneCore } from '../support/oneJob';

function madeLog(): SessionLog {
  const core = oneCore();
  give(core, { do: 'begin' });
  core.advance(100);
  give(core, ...connected, ...feeding);
  core.advance(200);
  give(core, { do: 'rewind', step: 50 });
  core.advance(10);
  give(core, { do: 'wear', item: 'gloves' }, { do: 'finish' });
  return structuredClone(core.log());
}
const open = (log: SessionLog) => () => oneCore({ log });
const thrownBy = (act: () => unknown): unknown => {
  try {
    act();
  } catch (error) {
    return error;
  }
  return null;
};

describe('a log', () => {
  it('of this engine and scenario is run and keeps its hash', () => {
    const log = madeLog();
    expect(oneCore({ log }).log()).toEqual(log);
  });

  it('of another engine or scenario is refused, not restamped', () => {
    const other = '0123456789abcdef';
    const engine = thrownBy(open({ ...madeLog(), engineHash: other }));
    const scenario = thrownBy(open({ ...madeLog(), scenarioHash: other }));
    expect(engine).toBeInstanceOf(OtherLogError);
    expect(engine).toMatchObject({ other: 'engine' });
    expect(scenario).toMatchObject({ other: 'scenario' });
  });

  it('in which the clock ran before it began, or runs backwards, is broken', () => {
    const log = madeLog();
    const late = log.commands.map((entry, at) => (at === 0 ? { ...entry, step: 7 } : entry));
    expect(thrownBy(open({ ...log, commands: late }))).toMatchObject({ number: 1 });
    expect(thrownBy(open({ ...log, lastStep: 3 }))).toMatchObject({ number: 0 });
  });

  it('is also broken by what was undone later', () => {
    const log = madeLog();
    const [begin, ...rest] = log.commands;
    const odd = { step: 60, command: { do: 'wear', item: 'hat' } } as const;
    const error = thrownBy(open({ ...log, commands: [begin, odd, ...rest] }));
    expect(error).toBeInstanceOf(BrokenLogError);
    expect(error).toMatchObject({ number: 2, reason: 'session.refused.notAChoice' });
  });
});
