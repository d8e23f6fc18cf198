/**
 * The player that asks: it looks for the cause as somebody good would, each time by the test that tells most for its minutes,
 * and says what it then holds proven. It has the text twin, the car's service information, the bench and the suspects that
 * its score is weighed with (`suspectsIn`); what is hidden and what the author answers are compared afterwards.
 *
 * It goes on until one decision (`decisionOf`) has 0.95 of all belief [guess], or nothing that is left could tell anything;
 * from 0.8 on it is proven, as in `suspects/proven`. Nothing is called sound that has not been run with its cabin shut.
 */
import { layoutOf } from '../../layout/layouts';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { STEPS_PER_MINUTE } from '../../session/clock';
import type { Scenario } from '../../session/scenario/scenario';
import { causesIn, type GhostSpec, suspectOf } from '../../suspects/causes';
import { PROVEN, readsAsShort } from '../../suspects/proven';
import { forecastOf } from '../forecast/forecastOf';
import { ghostOptions } from '../forecast/ghostOptions';
import { suspectsIn } from '../forecast/suspectsIn';
import type { KnowRun, KnowTrial } from '../knowRun';
import { decisionOf } from './decisionOf';
import { handsOf } from './hands';
import { nextTest } from './nextTest';
import { seatFor } from './seat';
import { suspicionOf } from './suspicion';
import { type Test, testsOf } from './testsOf';
import { costOf, stageOf, type Whereabouts } from './whereabouts';

const SURE = 0.95;

/** Null where nothing is to be found out: the loop came empty. `ensemble` other than all that may be wrong is for tests. */
export function playToKnow(
  scenario: Scenario,
  seed: number,
  ensemble: readonly GhostSpec[] = suspectsIn(scenario, seed),
): KnowRun | null {
  const { data } = scenario;
  if (data.contents.state === 'evacuated') return null;
  const options = ghostOptions(data, seed);
  const forecast = forecastOf(options);
  const layout = layoutOf(data.vehicle);
  const known = new Set([...layout.parts, ...layout.lines].map(({ id }) => id));
  const suspicion = suspicionOf(ensemble, forecast, known, options.weather.pressurePa);
  const seat = seatFor(scenario, seed);
  const hands = handsOf(seat, forecast.probes, data.bench);
  const { stages } = forecast;
  const shut = stages.findIndex(({ id }) => id === 'shut');
  const trials: KnowTrial[] = [];
  // a leak is no cause that readings tell, so it is not searched for either
  let left = testsOf(forecast.probes, data.bench).filter(({ probes }) => probes[0].tool !== 'detector');
  let here: Whereabouts = { stages, at: 0, hasGauges: false };
  let costMinutes = 0;

  const enter = (at: number): void => {
    if (at > 0) seat.couple();
    here = { ...here, at };
    hands.enter(stages[at]);
  };
  const take = (test: Test): void => {
    const nats = suspicion.wouldTell(test.probes);
    costMinutes += costOf(test, here);
    const at = stageOf(test, here);
    if (at !== here.at) enter(at);
    else if (test.needsGauges && at === 0 && !here.hasGauges) {
      seat.couple();
      enter(0);
    }
    here = { ...here, hasGauges: here.hasGauges || test.needsGauges };
    suspicion.see(hands.take(test));
    left = hands.isOver() ? [] : left.filter((other) => other !== test);
    trials.push({ tests: test.probes.map(({ id }) => id), nats, share: suspicion.likeliest().share });
  };
  const next = (): Test | null => {
    const { share, decision } = suspicion.likeliest();
    if (share < SURE) return nextTest(suspicion, left, here);
    return decision === NOTHING_WRONG && here.at < shut ? lastLook(left) : null;
  };

  seat.prepare();
  enter(0);
  do {
    for (let test = next(); test; test = next()) take(test);
  } while (suspicion.lookedCloser());
  const { share, cause: claimed } = suspicion.likeliest(true);
  const charge = causesIn(claimed).some(readsAsShort) ? 'charge' : 'do-not-charge';
  seat.say(`decide ${charge}`);
  for (const cause of causesIn(claimed)) seat.say(`diagnose ${cause} ${share >= PROVEN ? 'sure' : 'likely'}`);
  seat.leave();
  const { core } = seat.sitting;
  return {
    seed,
    reached: share >= PROVEN,
    claimed,
    share,
    charge,
    right: isRight(scenario, claimed, known),
    minutes: core.step / STEPS_PER_MINUTE,
    costMinutes,
    lines: seat.lines,
    trials,
    steps: core.step + forecast.steps(),
  };
}

/** What is still to be read of a car that seems sound. */
const lastLook = (tests: readonly Test[]): Test | null =>
  tests.find(({ probes: [{ stage, channel }] }) => stage === 'shut' && channel === 'air@centre-vent') ?? null;

function isRight({ answer }: Scenario, claimed: string, known: ReadonlySet<string>): boolean {
  const hidden = answer.hidden ?? [];
  if (hidden.length === 0) return claimed === NOTHING_WRONG;
  return decisionOf(suspectOf(hidden), known) === decisionOf(claimed, known);
}
