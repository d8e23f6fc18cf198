import { describe, expect, it } from 'vitest';
import { makeDebrief, sessionFileOf, tellable } from '../../src/app/debriefOf';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';
import { readSessionFile } from '../../src/session/sessionFile';

const ID = 'weighed-in';

function played(mode: 'practice' | 'assessed', finished: boolean) {
  const core = openSession(scenarioById(ID), { mode, seed: 2 });
  core.send({ do: 'begin' });
  core.send({ do: 'judge-port', port: 'port-b', side: 'high' });
  core.advance(100);
  if (finished) core.send({ do: 'finish' });
  return core;
}

function told(mode: 'practice' | 'assessed', finished: boolean) {
  const core = played(mode, finished);
  return tellable(makeDebrief(scenarioById(ID), core), core);
}

describe('a debrief', () => {
  it('of an assessed job that is not handed over holds the file and nothing else', () => {
    const { findings, traces, actions, domains, points, score, file } = told('assessed', false);
    expect({ findings, traces, actions, domains, score }).toEqual({
      findings: [],
      traces: [],
      actions: [],
      domains: [],
      score: 0,
    });
    expect(points.values.length).toBe(0);
    expect(JSON.parse(file).log.scenarioId).toBe(ID);
  });

  it('is not needed for the file of a job that may still go on', () => {
    const core = played('practice', false);
    const { log, last } = readSessionFile(sessionFileOf(scenarioById(ID), core));
    expect(log).toEqual(core.log());
    expect(last).toMatchObject({ logHash: core.logHash(), stateHash: core.stateHash() });
    expect(core.view().phase).toBe('work');
  });

  it('is whole once the job is handed over, and in practice at any time', () => {
    for (const whole of [told('assessed', true), told('practice', false)]) {
      expect(whole.findings.length).toBeGreaterThan(0);
      expect(whole.traces.length).toBe(4);
    }
  });
});
