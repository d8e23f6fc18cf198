/** One log on the real car: in one go, in chunks, cut off and resumed: one state hash, one score. */
import { describe, expect, it } from 'vitest';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { score } from '../../src/scoring/score';
import type { SessionCore } from '../../src/session/corePort';
import { openRecorded } from '../../src/session/openRecorded';
import { openSession } from '../../src/session/openSession';
import { type PlanAct, readPlanLine, singleLines } from '../../src/session/plan/planWords';
import { recordOf } from '../../src/session/recordOf';
import { scenarioById } from '../../src/session/scenario/library';

const scenario = scenarioById('warm-at-the-lights');
const acts = singleLines(scenario.data.plans.careless).map((line): PlanAct => {
  const reading = readPlanLine(line);
  if ('act' in reading) return reading.act;
  throw new Error(reading.problem.reason);
});
const fresh = (): SessionCore => openSession(scenario, { mode: 'assessed', seed: 5 });

/** Plays the plan; `run` lets a number of steps pass and may hand over to another core. */
function play(run: (core: SessionCore, steps: number) => SessionCore): SessionCore {
  let core = fresh();
  for (const act of acts) {
    if (act.kind === 'command') core.send(act.command);
    else for (let time = 0; time < act.times; time++) core = run(core, act.steps);
  }
  return core;
}
const inChunksOf = (chunk: number) => (core: SessionCore, steps: number) => {
  for (let left = steps; left > 0; left -= chunk) core.advance(Math.min(chunk, left));
  return core;
};

describe('one log', () => {
  const whole = play(inChunksOf(1_000_000));
  const points = score(recordOf(scenario, whole.log()), scenario);

  it('written down while it was played, the same record as from its log', () => {
    const { core, record } = openRecorded(scenario, 'assessed', 5);
    for (const act of acts) {
      if (act.kind === 'command') core.send(act.command);
      else for (let time = 0; time < act.times; time++) core.advance(act.steps);
    }
    expect(record()).toEqual(recordOf(scenario, core.log()));
  });

  it.each([1, 7, 1000])('in chunks of %i steps', (chunk) => {
    const core = play(inChunksOf(chunk));
    expect([core.logHash(), core.stateHash()]).toEqual([whole.logHash(), whole.stateHash()]);
  });

  it('cut off and resumed at twenty steps drawn by chance', () => {
    const cuts = Array.from({ length: 20 }, (_, at) => Math.floor(15_000 * keyedUniform(1, 'cut', '', at)));
    const wanted = [...new Set(cuts)].sort((a, b) => a - b);
    const core = play((start, steps) => {
      let now = start;
      const end = now.step + steps;
      for (const cut of wanted.filter((step) => step > now.step && step < end)) {
        now.advance(cut - now.step);
        now = openSession(scenario, { mode: 'assessed', seed: 5, log: structuredClone(now.log()) });
      }
      now.advance(end - now.step);
      return now;
    });
    expect([core.logHash(), core.stateHash()]).toEqual([whole.logHash(), whole.stateHash()]);
    expect(score(recordOf(scenario, core.log()), scenario)).toEqual(points);
  });
});
