/**
 * What trying something otherwise costs on a session of half an hour, played to its plan: living it once for the debrief,
 * being ready with what that left, then every fifth of its actions left out, one after the other. The slowest is the one
 * that has nearly everything to run again. First shown is when its lines begin to stand beside the real ones.
 */
import '../../src/layout/allLayouts';
import '../../src/loop/car/allVehicles';
import '../../src/refrigerant/allFluids';
import { tracesOf } from '../../src/app/traces';
import { tryOut } from '../../src/scoring/whatIf';
import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';
import type { Scenario } from '../../src/session/scenario/scenario';
import type { LogEdit } from '../../src/session/whatIf/editLog';
import { liveSession, type Reruns, rerunsOf } from '../../src/session/whatIf/openReruns';
import { toEnd } from '../../src/session/whatIf/toEnd';

const SCENARIO = 'warm-at-the-lights';
const TRIED = 5;
/** The worker tells of it first after so long. */
const SLICE_S = 0.025;
const STEPS_PER_MINUTE = 3000;
const HALF_AN_HOUR = 30 * STEPS_PER_MINUTE;

export function whatIfOfHalfAnHour(): Record<string, number> {
  const scenario = scenarioById(SCENARIO);
  const core = openSession(scenario, { mode: 'assessed', seed: 1 });
  playPlan(core, scenario.data.plans.solution.slice(0, -1));
  core.advance(HALF_AN_HOUR - core.step);
  core.send({ do: 'finish' });
  const log = core.log();
  const [livedS, once] = seconds(() => toEnd(liveSession(scenario, log)));
  const [readyS, reruns] = seconds(() => rerunsOf(scenario, log, structuredClone(once)));
  const numbers = once.entries.filter((_, at) => at % TRIED === 1).map(({ number }) => number);
  const tried = numbers.map((number) => tryOne(scenario, reruns, [{ kind: 'drop', number }]));
  const firstS = tried.map(({ first }) => first).sort(byValue);
  const wholeS = tried.map(({ whole }) => whole).sort(byValue);
  return {
    'session, min': log.lastStep / STEPS_PER_MINUTE,
    'actions left out, one at a time': numbers.length,
    'lived once for the debrief, s': livedS,
    'ready after that, s': readyS,
    'first shown, median, s': firstS[firstS.length >> 1],
    'first shown, latest, s': firstS[firstS.length - 1],
    'complete, median, s': wholeS[wholeS.length >> 1],
    'complete, slowest, s': wholeS[wholeS.length - 1],
  };
}

const byValue = (a: number, b: number): number => a - b;

function tryOne(scenario: Scenario, reruns: Reruns, edits: readonly LogEdit[]) {
  const start = performance.now();
  const since = (): number => (performance.now() - start) / 1000;
  const work = tryOut(scenario, reruns, edits, null);
  let first = 0;
  while (!work.next().done) {
    if (first > 0 || since() < SLICE_S) continue;
    tracesOf(reruns.soFar());
    first = since();
  }
  return { first: first || since(), whole: since() };
}

function seconds<Result>(work: () => Result): [number, Result] {
  const start = performance.now();
  const result = work();
  return [(performance.now() - start) / 1000, result];
}
