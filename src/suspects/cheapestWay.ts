/**
 * What it costs to find a cause by asking, each time, the test that can tell most for what it costs: fault-location theory,
 * about 1960. Each ghost of the true causes is the car in turn and shows what it would; it ends when that car's own cause
 * is proven, or nothing left could tell anything. The mean over those ghosts, in minutes.
 */
import type { PlantOptions } from '../plant/buildPlant';
import { type Belief, type Bench, benchOf, firstBelief, information, learn, sharesOf } from './belief';
import { causesIn, type GhostSpec } from './causes';
import { buildGhost } from './ghost';
import { type Probe, probeGhosts } from './probeGhosts';
import { PROVEN, provenShare } from './proven';
import { TELLS_NOTHING } from './tellsNothing';
import { readingMinutes, SET_UP_MINUTES } from './testCosts';

/** `trueCauses` are suspects of the ensemble; NaN where none of them is. */
export function cheapestWay(
  options: PlantOptions,
  ensemble: readonly GhostSpec[],
  trueCauses: readonly string[],
): number {
  const any = buildGhost(options, ensemble[0]);
  const bench = benchOf(ensemble, any);
  const cars = trueCauses.flatMap((cause) => bench.ghostsOf[bench.causes.indexOf(cause)] ?? []);
  if (cars.length === 0) return Number.NaN;
  const probes = probeGhosts(options, ensemble, any);
  return cars.reduce((sum, car) => sum + minutesFor(bench, probes, car), 0) / cars.length;
}

interface SetUp {
  gauges: boolean;
  running: boolean;
}

function minutesFor(bench: Bench, probes: readonly Probe[], car: number): number {
  const setUp: SetUp = { gauges: false, running: false };
  let left = probes;
  let belief = firstBelief(bench);
  let minutes = 0;
  const own = causesIn(bench.causes[bench.causeAt[car]]);
  while (!isProven(bench, belief, own)) {
    const next = mostTelling(bench, belief, left, setUp);
    if (!next) break;
    minutes += costOf(next, setUp);
    setUp.gauges ||= next.needsGauges;
    setUp.running ||= next.needsRunning;
    belief = learn(bench, belief, [next.seen], asShows(next), [next.shows[car]]);
    left = left.filter((probe) => probe !== next);
  }
  return minutes;
}

function mostTelling(
  bench: Bench,
  belief: Belief,
  probes: readonly Probe[],
  setUp: SetUp,
): Probe | undefined {
  let best: Probe | undefined;
  let most = 0;
  for (const probe of probes) {
    const told = information(bench, belief, [probe.seen], asShows(probe));
    if (told < TELLS_NOTHING) continue;
    const worth = told / costOf(probe, setUp);
    if (worth <= most) continue;
    most = worth;
    best = probe;
  }
  return best;
}

const asShows = ({ shows }: Probe): readonly (readonly number[])[] => shows.map((value) => [value]);

function costOf({ seen, needsGauges, needsRunning }: Probe, setUp: SetUp): number {
  const gauges = needsGauges && !setUp.gauges ? SET_UP_MINUTES.gauges : 0;
  const running = needsRunning && !setUp.running ? SET_UP_MINUTES.running : 0;
  return readingMinutes(seen.channel) + gauges + running;
}

const isProven = ({ causes }: Bench, belief: Belief, own: readonly string[]): boolean =>
  provenShare(causes, sharesOf(belief), own) >= PROVEN;
