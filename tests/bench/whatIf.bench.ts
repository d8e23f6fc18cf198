/**
 * What trying something otherwise costs on a session of half an hour, played to its plan: making it ready once, then every
 * fifth of its actions left out, one after the other. The slowest is the one that has nearly everything to run again.
 */
import '../../src/layout/allLayouts';
import '../../src/loop/car/allVehicles';
import '../../src/refrigerant/allFluids';
import { tryOut } from '../../src/scoring/whatIf';
import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';
import { openReruns } from '../../src/session/whatIf/openReruns';
import { toEnd } from '../../src/session/whatIf/toEnd';

const SCENARIO = 'warm-at-the-lights';
const TRIED = 5;
const STEPS_PER_MINUTE = 3000;
const HALF_AN_HOUR = 30 * STEPS_PER_MINUTE;

export function whatIfOfHalfAnHour(): Record<string, number> {
  const scenario = scenarioById(SCENARIO);
  const core = openSession(scenario, { mode: 'assessed', seed: 1 });
  playPlan(core, scenario.data.plans.solution.slice(0, -1));
  core.advance(HALF_AN_HOUR - core.step);
  core.send({ do: 'finish' });
  const log = core.log();
  const [readyS, reruns] = seconds(() => toEnd(openReruns(scenario, log)));
  const numbers = reruns.once.entries.filter((_, at) => at % TRIED === 1).map(({ number }) => number);
  const taken = numbers
    .map((number) => seconds(() => toEnd(tryOut(scenario, reruns, [{ kind: 'drop', number }], null)))[0])
    .sort((a, b) => a - b);
  return {
    'session, min': log.lastStep / STEPS_PER_MINUTE,
    'actions left out, one at a time': numbers.length,
    'made ready, s': readyS,
    'an action left out, median, s': taken[taken.length >> 1],
    'an action left out, slowest, s': taken[taken.length - 1],
  };
}

function seconds<Result>(work: () => Result): [number, Result] {
  const start = performance.now();
  const result = work();
  return [(performance.now() - start) / 1000, result];
}
