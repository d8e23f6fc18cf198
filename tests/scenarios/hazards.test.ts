/** Every critical way of getting hurt or breaking something: a plan that does only that fails, one that comes near does not. */
import { describe, expect, it } from 'vitest';
import { type Score, score } from '../../src/scoring/score';
import type { LoggedCommand } from '../../src/session/corePort';
import { engineHash } from '../../src/session/engineHash';
import { openSession } from '../../src/session/openSession';
import { readPlanLine } from '../../src/session/plan/planWords';
import { playPlan } from '../../src/session/plan/playPlan';
import { recordOf } from '../../src/session/recordOf';
import { rubrics } from '../../src/session/scenario/rubrics';
import { type HazardPlan, hazardScenario } from '../support/hazardCars';
import { hazardPlans } from '../support/hazardPlans';

/** As a log, so that it is played once; a command that is refused breaks it. */
function scored(on: HazardPlan['on'], lines: readonly string[]): Score {
  const scenario = hazardScenario(on);
  const commands: LoggedCommand[] = [];
  let step = 0;
  for (const line of [...lines, 'finish']) {
    const reading = readPlanLine(line);
    if (!('act' in reading)) throw new Error(`${line}: ${reading.problem.reason}`);
    if (reading.act.kind === 'wait') step += reading.act.steps;
    else commands.push({ step, command: reading.act.command });
  }
  const { scenarioId, scenarioHash } = scenario.job;
  const log = {
    ...({ format: 'portside-session-1', mode: 'assessed' } as const),
    ...{ scenarioId, scenarioHash, engineHash, seed: 1, commands, lastStep: step },
  };
  return score(recordOf(scenario, log), scenario);
}

it('has a plan for every critical rule', () => {
  const rules = [...rubrics.values()].flatMap((rubric) => rubric.rules);
  const critical = rules.filter(({ severity }) => severity === 'critical');
  const planned = new Set(hazardPlans.map(({ rule }) => rule));
  expect(critical.map(({ id }) => id).filter((id) => !planned.has(id))).toEqual([]);
});

describe.each(hazardPlans.map((plan, index) => [`${plan.rule}, plan ${index + 1}`, plan] as const))(
  '%s',
  (_, { rule, on, broken, near, nearOn = on }) => {
    it('fails alone, and not by coming near', () => {
      const failed = scored(on, broken);
      expect(failed.critical).toEqual([rule]);
      expect(failed.passed).toBe(false);
      expect(failed.reported).toBeLessThan(75);
      expect(scored(nearOn, near).critical).toEqual([]);
    });
  },
);

describe('a hazard in practice', () => {
  it('stops at the step in which it comes true, and going back is exactly where it was', () => {
    const plan = hazardPlans.find(({ rule }) => rule === 'pitGas') as HazardPlan;
    const core = openSession(hazardScenario(plan.on), { mode: 'practice', seed: 1 });
    playPlan(core, plan.broken.slice(0, -2));
    const [step, before] = [core.step, core.stateHash()];
    playPlan(core, plan.broken.slice(-2));
    expect(core.view().stopped).toMatchObject({ rule: 'pitGas', rewindStep: step });
    core.send({ do: 'rewind', step });
    expect(core.view().stopped).toBeNull();
    core.send({ do: 'pit', to: 'out' });
    core.send({ do: 'door', to: 'shut' });
    core.send({ do: 'door', to: 'open' });
    expect(core.stateHash()).toBe(before);
  });
});
