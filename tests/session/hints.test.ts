/** Hints: three levels, in the log and in the result of practice, and none in an assessed session. */
import { describe, expect, it } from 'vitest';
import { scoredSession } from '../../src/cli/scoredSession';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';
import { oneCore } from '../support/oneJob';

describe('a hint', () => {
  it('is refused in an assessed session, at every level, and leaves no trace', () => {
    const core = oneCore({ mode: 'assessed' });
    core.send({ do: 'begin' });
    for (const level of [1, 2, 3])
      expect(core.send({ do: 'hint', level })).toMatchObject({
        ok: false,
        reason: 'session.refused.noHints',
      });
    expect(core.log().commands).toHaveLength(1);
    expect(core.view().hints.opened).toBe(0);
  });

  it('stands in the log of practice; there is no fourth', () => {
    const core = oneCore();
    core.send({ do: 'begin' });
    expect(core.send({ do: 'hint', level: 2 }).ok).toBe(true);
    expect(core.send({ do: 'hint', level: 4 }).ok).toBe(false);
    expect(core.log().commands.map(({ command }) => command.do)).toEqual(['begin', 'hint']);
    expect(core.view().hints).toEqual({ opened: 2, levels: 3 });
  });

  it('is told beside a score, which says that it is one of practice', () => {
    const scenario = scenarioById('weighed-in');
    const core = openSession(scenario, { mode: 'practice', seed: 1 });
    for (const command of [{ do: 'begin' }, { do: 'hint', level: 1 }, { do: 'finish' }] as const)
      core.send(command);
    const { printed, file } = scoredSession(scenario, core, true);
    expect(printed).toMatchObject({ mode: 'practice', hints: 1 });
    // a loop that came empty has nothing to weigh, and the file does not say it was
    expect(printed.weighed).toBe(false);
    expect(file.last).not.toHaveProperty('weighed');
  });
});
