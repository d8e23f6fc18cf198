/** Which of the ways not to answer what a job asks a debrief tells. */
import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../shared/schema/plan';
import { makeDebrief } from '../../src/app/debriefOf';
import { GATE_REASONS } from '../../src/scoring/gateReasons';
import { scenarioById } from '../../src/session/scenario/library';
import { isWordId } from '../../src/words/words';
import { played } from '../support/plans';

function reasons(id: string, ...lines: PlanLine[]): readonly string[] {
  const scenario = scenarioById(id);
  const { core, record, refused } = played(scenario, ['begin', ...lines, 'finish']);
  expect(refused).toEqual([]);
  return makeDebrief(scenario, core, record).gates;
}

describe('the gates of a job', () => {
  it('say that nothing was answered', () => {
    expect(reasons('leaves')).toEqual(['missing']);
  });

  it('say that it was answered wrongly, after reading', () => {
    const lines = ['look condenser', 'diagnose low-charge sure', 'decide charge'];
    expect(reasons('leaves', ...lines)).toEqual(['wrong']);
  });

  it('say that it was answered before anything was read, though rightly', () => {
    const lines = ['diagnose condenser-air-blocked sure', 'decide do-not-charge'];
    expect(reasons('leaves', ...lines)).toEqual(['unread']);
  });

  it('say that the engine ran before it might, and that a charge is off', () => {
    const { careless } = scenarioById('weighed-in').data.plans;
    expect(
      reasons('weighed-in', ...careless.filter((line) => line !== 'begin' && line !== 'finish')),
    ).toContain('off');
    const started = ['ac on', 'engine 1500', { 'run-on': '10 s' }] as const;
    expect(reasons('drill-can-on-high', ...started)).toEqual(['forbidden']);
  });

  it('each have a sentence', () => {
    expect(GATE_REASONS.filter((reason) => !isWordId(`debrief.gate.${reason}`))).toEqual([]);
  });
});
