/**
 * Of each cause the severity that fits best what was seen. What a cause shows goes up and down with its severity by no
 * straight line (a drier is nearly open, and a little further on shut), so severities are searched. Of a cause that is new: a
 * wide step to either side of where the forecast puts it, then three times where it looks best between those that were lived,
 * or another step on where the worst of them fits best. Of one that was searched before: once more, since more was seen. A
 * cause that fits well needs no finer ones.
 */
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { GhostSpec } from '../../suspects/causes';
import type { Company, Member } from './company';
import type { Seen } from './doubtOf';
import { likelySeverity } from './likelySeverity';

const TO_EITHER_SIDE = 0.3;
const ROUNDS = 3;
/** A cause whose best place looks so many nats worse than the best car is not tried there [guess]. */
const NOT_NEAR = 60;
/** Nats a reading: better on the mean, and finer severities could tell no more [guess]. */
const FINE = -0.5;
/** Nats under the best car: nearer, and one that was searched before is not searched again [guess]. */
const BEHIND = 1;
const MILDEST = 0.05;
/** Nearer to one that was lived it would tell nothing new. */
const NEAR = 0.025;

export function searchSeverities(company: Company, causes: readonly string[], seen: readonly Seen[]): void {
  const isNew = (cause: string, severity: number): boolean =>
    severity >= MILDEST &&
    severity <= 1 &&
    !company.of(cause).some(({ spec }) => Math.abs(spec.severity - severity) < NEAR);
  const isWorst = (cause: string, severity: number): boolean =>
    company.of(cause).every(({ spec }) => spec.severity <= severity);
  const fresh = new Set(causes.filter((cause) => company.of(cause).length === 1));
  const isBehind = (cause: string): boolean => company.best(cause).fit < company.bestFit() - BEHIND;
  const open = (): readonly string[] =>
    causes.filter(
      (cause) =>
        cause !== NOTHING_WRONG &&
        company.best(cause).fit <= FINE * seen.length &&
        (fresh.has(cause) || isBehind(cause)),
    );
  for (const cause of open().filter((one) => fresh.has(one))) {
    const { spec } = company.best(cause);
    for (const severity of [spec.severity - TO_EITHER_SIDE, spec.severity + TO_EITHER_SIDE])
      if (isNew(cause, severity)) company.add(atSeverity(spec, severity));
  }
  for (let round = 0; round < ROUNDS; round++) {
    for (const cause of open().filter((one) => round === 0 || fresh.has(one))) {
      const { spec, fit } = company.best(cause);
      const further = Math.min(1, spec.severity + TO_EITHER_SIDE);
      if (isWorst(cause, spec.severity) && isNew(cause, further)) {
        if (fit > company.bestFit() - NOT_NEAR) company.add(atSeverity(spec, further));
        continue;
      }
      const lived = [...company.of(NOTHING_WRONG), ...company.of(cause)].map(placed);
      const likely = likelySeverity(lived, seen, company.atmospherePa, (severity) => isNew(cause, severity));
      if (likely && likely.fit > company.bestFit() - NOT_NEAR) company.add(atSeverity(spec, likely.severity));
    }
  }
}

const placed = ({ spec, shows }: Member) => ({ severity: spec.severity, shows });

/** Two faults at once both get it. */
const atSeverity = ({ cause, both }: GhostSpec, severity: number): GhostSpec => ({
  cause,
  severity,
  ...(both === undefined ? {} : { both: both.map((one) => ({ ...one, severity })) }),
});
