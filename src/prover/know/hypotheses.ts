/**
 * What a person may suspect: ghosts, and cars between two severities of a cause, which show what lies between (half of the
 * way, and of the way from a sound car to the mildest ghost a third and two). So a cause whose severity no ghost has is not
 * thrown out for it, and no further car is lived.
 */
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import type { Probe } from '../forecast/probe';

export type Shows = (probe: Probe) => number;

export interface Hypothesis {
  readonly cause: string;
  /** The ghost it is, or would be. */
  readonly spec: GhostSpec;
  /** Whether it is a ghost itself. */
  readonly isGhost: boolean;
  /** Of its cause: what is hardly there seldom brings a car in [guess]. */
  readonly weight: number;
  readonly shows: Shows;
  /** Of a thermometer, K. */
  readonly wanders: Shows;
}

interface Way {
  readonly share: number;
  readonly weight: number;
}

const FROM_SOUND: readonly Way[] = [
  { share: 0.34, weight: 0.2 },
  { share: 0.67, weight: 0.5 },
];
const BETWEEN: readonly Way[] = [{ share: 0.5, weight: 1 }];
/** A ghost milder than this weighs as what lies between it and a sound car. */
const MILD = 0.3;

/** Ghosts of one cause may come in any order of severity. */
export function hypothesesOf(ensemble: readonly GhostSpec[], forecast: Forecast): readonly Hypothesis[] {
  const rows = new Map(ensemble.map((spec) => [spec, shownBy(spec, forecast)]));
  const sound = ensemble.find(({ cause }) => cause === NOTHING_WRONG);
  return ensemble.flatMap((spec) => {
    const own = rows.get(spec) as Shows;
    const wanders: Shows = (probe) => forecast.wanders(spec, probe);
    const milder = ensemble
      .filter(({ cause, severity }) => cause === spec.cause && severity < spec.severity)
      .sort((a, b) => b.severity - a.severity);
    const before = milder[0] ?? (spec === sound ? undefined : sound);
    const from = before && rows.get(before);
    const ways = milder.length > 0 ? BETWEEN : FROM_SOUND;
    const partly =
      before && from
        ? ways.map((way) => partWay(between(before, spec, way.share), from, own, way, wanders))
        : [];
    const weight = spec !== sound && spec.severity < MILD ? FROM_SOUND[1].weight : 1;
    return [...partly, { cause: spec.cause, spec, isGhost: true, weight, shows: own, wanders }];
  });
}

/** A car that is known to fit stands for itself. */
export const fittedOf = (spec: GhostSpec, forecast: Forecast): Hypothesis => ({
  cause: spec.cause,
  spec,
  isGhost: true,
  weight: 1,
  shows: shownBy(spec, forecast),
  wanders: (probe) => forecast.wanders(spec, probe),
});

/** `from` is a milder ghost of the same cause, or the sound car. */
function between(from: GhostSpec, to: GhostSpec, share: number): GhostSpec {
  const part = (a: number, b: number): number => a + share * (b - a);
  const both = to.both?.map((one, at) => ({
    ...one,
    severity: part(from.both?.[at].severity ?? 0, one.severity),
  }));
  return { ...to, severity: part(from.severity, to.severity), ...(both ? { both } : {}) };
}

function shownBy(spec: GhostSpec, forecast: Forecast): Shows {
  const values = new Map<string, number>();
  return (probe) => {
    const found = values.get(probe.id) ?? forecast.shows(spec, probe);
    values.set(probe.id, found);
    return found;
  };
}

function partWay(
  spec: GhostSpec,
  from: Shows,
  to: Shows,
  { share, weight }: Way,
  wanders: Shows,
): Hypothesis {
  return {
    cause: spec.cause,
    spec,
    isGhost: false,
    weight,
    wanders,
    shows(probe) {
      const [a, b] = [from(probe), to(probe)];
      if (probe.unit === 'look' || Number.isNaN(a) || Number.isNaN(b)) return share < 0.5 ? a : b;
      return a + share * (b - a);
    },
  };
}
