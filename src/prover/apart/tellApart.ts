/**
 * Suspects against tests: what each suspect would show at every test there is, and which two causes no test of the bench
 * parts, with the nearest test that would. A cause has a row for each severity of the ensemble; two causes are as far apart
 * as their nearest rows. What the scenario hides stands at its own severity only: that is the car in the bay.
 *
 * Two rows are parted where they are two spreads apart over all that the bench can read (`spreadsTogether`). A test that
 * would part them does so alone.
 */
import { layoutOf } from '../../layout/layouts';
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { Scenario } from '../../session/scenario/scenario';
import { causesOf, type GhostSpec } from '../../suspects/causes';
import type { ApartTable, Pair, TestOf } from '../apartTable';
import { forecastOf } from '../forecast/forecastOf';
import { ghostOptions } from '../forecast/ghostOptions';
import { suspectsIn } from '../forecast/suspectsIn';
import { decisionOf } from '../know/decisionOf';
import { isOnBench, minutesAlone } from '../know/testsOf';
import { nearestRows } from './nearestRows';
import { ownGhost } from './ownGhost';
import { rowOf } from './rowOf';
import { PARTED } from './spreadsTogether';

/** `ensemble` other than all that may be wrong with this car is for tests. Null where the loop came empty. */
export function tellApart(
  scenario: Scenario,
  seed: number,
  ensemble: readonly GhostSpec[] = suspectsIn(scenario, seed),
): ApartTable | null {
  const { data } = scenario;
  if (data.contents.state === 'evacuated') return null;
  const options = ghostOptions(data, seed);
  const forecast = forecastOf(options);
  const { probes, stages } = forecast;
  const { parts, lines } = layoutOf(data.vehicle);
  const known = new Set([...parts, ...lines].map(({ id }) => id));
  const rows = withOwn(ensemble, scenario).map((spec) => rowOf(spec, forecast, probes));
  const tests = probes.map(
    (probe): TestOf => ({
      id: probe.id,
      tool: probe.tool,
      state: probe.stage,
      unit: probe.unit,
      costMinutes: minutesAlone(probe) + (stages.find(({ id }) => id === probe.stage)?.minutes ?? 0),
      isOnBench: isOnBench(probe, data.bench),
    }),
  );
  const onBench = tests.map((test) => test.isOnBench);
  const pairFor = (a: string, b: string): Pair | null => {
    const of = (cause: string) => rows.filter((row) => row.cause === cause);
    const nearest = nearestRows(probes, onBench, [of(a), of(b)], options.weather.pressurePa);
    if (nearest === null || nearest.together >= PARTED) return null;
    const { spreads } = nearest;
    const best = bestOf(tests, spreads);
    const tells = nearestTest(tests, spreads);
    return {
      a,
      b,
      decisionDiffers: decisionOf(a, known) !== decisionOf(b, known),
      best: { test: tests[best].id, spreads: spreads[best] },
      wouldTell:
        tells < 0
          ? null
          : {
              test: tests[tells].id,
              tool: tests[tells].tool,
              spreads: spreads[tells],
              shows: [shownOf(nearest.a.values[tells]), shownOf(nearest.b.values[tells])],
            },
    };
  };
  const causes = causesOf(rows);
  return {
    seed,
    tests,
    rows: rows.map(({ cause, severity, values }) => ({ cause, severity, shows: values.map(shownOf) })),
    pairs: causes.flatMap((a, at) => causes.slice(at + 1).flatMap((b) => pairFor(a, b) ?? [])),
    steps: forecast.steps(),
  };
}

/** Place of what parts best on the bench. */
const bestOf = (tests: readonly TestOf[], spreads: readonly number[]): number =>
  tests.reduce(
    (best, test, at) => (test.isOnBench && (best < 0 || spreads[at] > spreads[best]) ? at : best),
    -1,
  );

/** Place of the cheapest test the bench lacks that parts alone; -1 where there is none. */
const nearestTest = (tests: readonly TestOf[], spreads: readonly number[]): number =>
  tests.reduce((best, test, at) => {
    if (test.isOnBench || spreads[at] < PARTED) return best;
    return best < 0 || test.costMinutes < tests[best].costMinutes ? at : best;
  }, -1);

/** JSON has no NaN, and a proof is the same in whatever way it came. */
const shownOf = (value: number): number | null => (Number.isNaN(value) ? null : value);

/** What is hidden takes the place of its cause. */
function withOwn(ensemble: readonly GhostSpec[], scenario: Scenario): readonly GhostSpec[] {
  const own = ownGhost(scenario);
  return own === null || own.cause === NOTHING_WRONG
    ? ensemble
    : [...ensemble.filter(({ cause }) => cause !== own.cause), own];
}
