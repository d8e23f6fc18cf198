/**
 * Suspects against tests: what each suspect would show at every test there is, and which two causes no test of the bench
 * parts, with the nearest test that would. A cause has a row for each severity of the ensemble; two causes are as far apart
 * as their nearest rows. What the scenario hides stands at its own severity only: that is the car in the bay. Who is parted
 * from all others is read no further (`rowsByStage`).
 *
 * Two rows are parted where they are two spreads apart over all that the bench can read (`spreadsTogether`). A test that
 * would part them does so alone.
 */
import { layoutOf } from '../../layout/layouts';
import { placesOf } from '../../layout/placesOf';
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { Scenario } from '../../session/scenario/scenario';
import { causesOf, type GhostSpec } from '../../suspects/causes';
import type { ApartTable } from '../apartTable';
import { forecastOf } from '../forecast/forecastOf';
import { ghostOptions } from '../forecast/ghostOptions';
import { suspectsIn } from '../forecast/suspectsIn';
import { ownSuspects } from '../ownSuspects';
import { ownGhost } from './ownGhost';
import { pairBetween, type Tried } from './pairBetween';
import { rowsByStage } from './rowsByStage';
import { shownOf } from './shownOf';
import { testsAt } from './testsAt';

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
  const { probes } = forecast;
  const tests = testsAt(forecast, data.bench);
  const own = ownSuspects(scenario);
  const rows = rowsByStage(
    withOwn(ensemble, scenario),
    forecast,
    tests.map(({ isOnBench }) => isOnBench),
    options.weather.pressurePa,
    ({ cause }) => own.includes(cause),
  );
  const tried: Tried = {
    probes,
    tests,
    known: placesOf(layoutOf(data.vehicle)),
    atmospherePa: options.weather.pressurePa,
  };
  const of = (cause: string) => rows.filter((row) => row.cause === cause);
  const causes = causesOf(rows);
  return {
    seed,
    states: forecast.stages.map(({ id }) => id),
    tests,
    rows: rows.map(({ cause, severity, stages, values }) => ({
      cause,
      severity,
      stages,
      shows: values.map(shownOf),
    })),
    pairs: causes.flatMap((a, at) =>
      causes.slice(at + 1).flatMap((b) => pairBetween(tried, of(a), of(b)) ?? []),
    ),
    steps: forecast.steps(),
  };
}

/** What is hidden takes the place of its cause. */
function withOwn(ensemble: readonly GhostSpec[], scenario: Scenario): readonly GhostSpec[] {
  const own = ownGhost(scenario);
  return own === null || own.cause === NOTHING_WRONG
    ? ensemble
    : [...ensemble.filter(({ cause }) => cause !== own.cause), own];
}
