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
import type { Probe } from '../forecast/probe';
import { spreadsApart } from '../forecast/spreadsApart';
import { suspectsIn } from '../forecast/suspectsIn';
import { decisionOf } from '../know/decisionOf';
import { isOnBench, minutesAlone } from '../know/testsOf';
import { ownGhost } from './ownGhost';
import { PARTED, spreadsTogether } from './spreadsTogether';

interface Row {
  readonly cause: string;
  readonly severity: number;
  readonly values: readonly number[];
  readonly wanders: readonly number[];
}

/** `ensemble` other than all that may be wrong with this car is for tests. Null where the loop came empty. */
export function apartTable(
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
  const onBench = probes.map((probe) => isOnBench(probe, data.bench));
  const rows = withOwn(ensemble, scenario).map(
    (spec): Row => ({
      cause: spec.cause,
      severity: spec.severity,
      values: probes.map((probe) => forecast.shows(spec, probe)),
      wanders: probes.map((probe) => forecast.wanders(spec, probe)),
    }),
  );
  const costOf = (probe: Probe): number =>
    minutesAlone(probe) + (stages.find(({ id }) => id === probe.stage)?.minutes ?? 0);
  const apart = (a: Row, b: Row): readonly number[] =>
    probes.map((probe, at) =>
      spreadsApart(
        probe,
        a.values[at],
        b.values[at],
        options.weather.pressurePa,
        Math.max(a.wanders[at], b.wanders[at]),
      ),
    );
  const together = (spreads: readonly number[]): number =>
    spreadsTogether(
      probes.filter((_, at) => onBench[at]),
      spreads.filter((_, at) => onBench[at]),
    );
  const bestOf = (spreads: readonly number[]): number =>
    spreads.reduce((best, one, at) => (onBench[at] && (best < 0 || one > spreads[best]) ? at : best), -1);
  const nearestOf = (spreads: readonly number[]): number =>
    spreads.reduce((best, one, at) => {
      if (onBench[at] || one < PARTED) return best;
      return best < 0 || costOf(probes[at]) < costOf(probes[best]) ? at : best;
    }, -1);

  const pairFor = (a: string, b: string): Pair | null => {
    let least: { a: Row; b: Row; spreads: readonly number[]; apart: number } | null = null;
    for (const one of rows.filter(({ cause }) => cause === a)) {
      for (const other of rows.filter(({ cause }) => cause === b)) {
        const spreads = apart(one, other);
        const far = together(spreads);
        if (least === null || far < least.apart) least = { a: one, b: other, spreads, apart: far };
      }
    }
    if (least === null || least.apart >= PARTED) return null;
    const { spreads } = least;
    const best = bestOf(spreads);
    const tells = nearestOf(spreads);
    return {
      a,
      b,
      decisionDiffers: decisionOf(a, known) !== decisionOf(b, known),
      best: { test: probes[best].id, spreads: spreads[best] },
      wouldTell:
        tells < 0
          ? null
          : {
              test: probes[tells].id,
              tool: probes[tells].tool,
              spreads: spreads[tells],
              shows: [shownOf(least.a.values[tells]), shownOf(least.b.values[tells])],
            },
    };
  };

  const causes = causesOf(rows);
  return {
    seed,
    tests: probes.map(
      (probe, at): TestOf => ({
        id: probe.id,
        tool: probe.tool,
        state: probe.stage,
        unit: probe.unit,
        costMinutes: costOf(probe),
        isOnBench: onBench[at],
      }),
    ),
    rows: rows.map(({ cause, severity, values }) => ({
      cause,
      severity,
      shows: values.map(shownOf),
    })),
    pairs: causes.flatMap((a, at) => causes.slice(at + 1).flatMap((b) => pairFor(a, b) ?? [])),
    steps: forecast.steps(),
  };
}

/** JSON has no NaN, and a proof is the same in whatever way it came. */
const shownOf = (value: number): number | null => (Number.isNaN(value) ? null : value);

/** What is hidden takes the place of its cause. */
function withOwn(ensemble: readonly GhostSpec[], scenario: Scenario): readonly GhostSpec[] {
  const own = ownGhost(scenario);
  return own === null || own.cause === NOTHING_WRONG
    ? ensemble
    : [...ensemble.filter(({ cause }) => cause !== own.cause), own];
}
