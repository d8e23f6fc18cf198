/**
 * Where between two severities that were lived a cause looks best. What it shows there is taken to lie between what the two
 * show, in part; a look is as the nearer has it. Only a guess of where to live the next one.
 */
import type { Probe } from '../forecast/probe';
import type { Seen } from './doubtOf';
import { fitOf } from './fitOf';

export interface AtSeverity {
  readonly severity: number;
  /** By reading. */
  readonly shows: readonly number[];
}

export interface Likely {
  readonly severity: number;
  /** As `fitOf`. */
  readonly fit: number;
}

const PARTS = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875];

/** `lived` in any order, a sound car among them as the mildest; null where no new severity is left. */
export function likelySeverity(
  lived: readonly AtSeverity[],
  seen: readonly Seen[],
  atmospherePa: number,
  isNew: (severity: number) => boolean,
): Likely | null {
  const rising = [...lived].sort((a, b) => a.severity - b.severity);
  const places = rising
    .slice(1)
    .flatMap((to, at) =>
      PARTS.map((part) => partWay(rising[at], to, part, seen)).filter(({ severity }) => isNew(severity)),
    );
  return places
    .map(({ severity, shows }): Likely => ({ severity, fit: fitOf(seen, shows, atmospherePa) }))
    .reduce<Likely | null>((best, one) => (best === null || one.fit > best.fit ? one : best), null);
}

const partWay = (from: AtSeverity, to: AtSeverity, part: number, seen: readonly Seen[]): AtSeverity => ({
  severity: from.severity + part * (to.severity - from.severity),
  shows: seen.map(({ probe }, at) => between(probe, from.shows[at], to.shows[at], part)),
});

function between({ unit }: Probe, from: number, to: number, part: number): number {
  if (unit === 'look' || Number.isNaN(from) || Number.isNaN(to)) return part < 0.5 ? from : to;
  return from + part * (to - from);
}
