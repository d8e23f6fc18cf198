/**
 * The player that asks: it looks for the cause as somebody good would, each time by the test that tells most for its
 * minutes, and says what it then holds proven. It has the text twin, the car's service information, the bench, the suspects
 * that its score is weighed with and a few severities more (`suspectsAsked`); what is hidden and what the author answers are
 * compared afterwards.
 *
 * It goes on until one decision (`decisionOf`) has 0.95 of all belief [guess], or nothing that is left could tell anything;
 * from 0.8 on it is proven, as in `suspects/proven`. Before it puts a running car through another stage, and in the end
 * where doubt is left or what was seen is unlike all forecasts, it takes a closer look (`closerLook`). Nothing is called
 * sound that has not been run with its cabin shut.
 */
import { layoutOf } from '../../layout/layouts';
import { placesOf } from '../../layout/placesOf';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { STEPS_PER_MINUTE } from '../../session/clock';
import type { Scenario } from '../../session/scenario/scenario';
import { causesIn, type GhostSpec } from '../../suspects/causes';
import { PROVEN, readsAsShort } from '../../suspects/proven';
import { ownGhost } from '../apart/ownGhost';
import { forecastOf } from '../forecast/forecastOf';
import { ghostOptions } from '../forecast/ghostOptions';
import { suspectsAsked, suspectsIn } from '../forecast/suspectsIn';
import type { KnowRun, KnowTrial } from '../knowRun';
import { ownSuspects } from '../ownSuspects';
import { alikeOf } from './alikeOf';
import { type CloserLook, closerLookAt } from './closerLook';
import { decisionOf } from './decisionOf';
import type { Seen } from './doubtOf';
import { handsOf } from './hands';
import { nextTest } from './nextTest';
import { seatFor } from './seat';
import { suspicionOf } from './suspicion';
import { SAMPLE, type Test, testsOf } from './testsOf';
import { costOf, stageOf, type Whereabouts } from './whereabouts';

const SURE = 0.95;

/** Null where nothing is to be found out: the loop came empty. `ensemble` other than all that may be wrong is for tests. */
export function playToKnow(
  scenario: Scenario,
  seed: number,
  ensemble: readonly GhostSpec[] = suspectsAsked(scenario, seed),
): KnowRun | null {
  const { data } = scenario;
  if (data.contents.state === 'evacuated') return null;
  const options = ghostOptions(data, seed);
  const forecast = forecastOf(options);
  const known = placesOf(layoutOf(data.vehicle));
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
  let closer = null as CloserLook | null;
  const seen: Seen[] = [];

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
    const taken = hands.take(test);
    seen.push(...taken);
    suspicion.see(taken);
    left = hands.isOver() ? [] : left.filter((other) => other !== test);
    trials.push({ tests: test.probes.map(({ id }) => id), nats, share: suspicion.likeliest().share });
  };
  const next = (): Test | null => {
    const { share, decision } = suspicion.likeliest();
    if (share < SURE) return nextTest(suspicion, left, here);
    return decision === NOTHING_WRONG && here.at < shut ? lastLook(left) : null;
  };
  /** After a closer look forecasts are believed no more. */
  const isDoubtful = (): boolean =>
    closer !== null || suspicion.likeliest().share < SURE || suspicion.isUnlike();
  const sayWhatIsLeft = (): void => {
    if (closer) suspicion.settle(closer.atLast(seen));
  };
  /** Whether it is sure after a closer look. */
  const isSureCloser = (): boolean => {
    closer ??= closerLookAt(data, seed, suspicion.candidates(), forecast);
    const { core } = seat.sitting;
    suspicion.settle(closer.look({ log: core.log().commands, step: core.step, seen }));
    const { share, decision } = suspicion.likeliest();
    return share >= SURE && (decision !== NOTHING_WRONG || here.at >= shut);
  };

  seat.prepare();
  enter(0);
  // nobody reads needles of a gas they do not know: common practice
  for (const test of left.filter(({ id }) => id === SAMPLE)) take(test);
  for (let isSettled = false; ; ) {
    const test = next();
    const isElsewhere = test !== null && here.at > 0 && stageOf(test, here) !== here.at;
    if (!isSettled && (test === null ? isDoubtful() : isElsewhere)) {
      isSettled = true;
      if (isSureCloser()) break;
      continue;
    }
    if (test === null) break;
    take(test);
    isSettled = false;
  }
  if (suspicion.likeliest().share < PROVEN) sayWhatIsLeft();
  const held = suspicion.likeliest();
  const { share, cause: claimed } = held;
  const charge = causesIn(claimed).some(readsAsShort) ? 'charge' : 'do-not-charge';
  seat.say(`decide ${charge}`);
  for (const cause of causesIn(claimed)) seat.say(`diagnose ${cause} ${share >= PROVEN ? 'sure' : 'likely'}`);
  seat.leave();
  const [hidden] = ownSuspects(scenario);
  const isRight = decisionOf(hidden, known) === held.decision;
  const own = ownGhost(scenario) ?? closer?.bestOf(hidden) ?? null;
  const alike =
    isRight || own === null ? null : alikeOf(own, held.spec, forecast, data, options.weather.pressurePa);
  const { core } = seat.sitting;
  return {
    seed,
    reached: share >= PROVEN,
    claimed,
    share,
    charge,
    right: isRight || alike !== null,
    alike,
    minutes: core.step / STEPS_PER_MINUTE,
    costMinutes,
    lines: seat.lines,
    trials,
    steps: core.step + (closer?.steps() ?? 0) + forecast.steps(suspectsIn(scenario, seed)),
  };
}

/** What is still to be read of a car that seems sound. */
const lastLook = (tests: readonly Test[]): Test | null =>
  tests.find(({ probes: [{ stage, channel }] }) => stage === 'shut' && channel === 'air@centre-vent') ?? null;
