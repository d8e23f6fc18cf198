/**
 * Ghosts for a closer look, where not even the likeliest of the ensemble shows what was seen: the likeliest causes at
 * severities between and below those that the ensemble has.
 */
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { GhostSpec } from '../../suspects/causes';

const SEVERITIES = [0.15, 0.3, 0.7];
/** Nearer than this to one that there is it would tell nothing new. */
const NEAR = 0.06;

/** `causes`: the likeliest. */
export function finerGhosts(ensemble: readonly GhostSpec[], causes: readonly string[]): readonly GhostSpec[] {
  const isThere = (cause: string, severity: number): boolean =>
    ensemble.some((spec) => spec.cause === cause && Math.abs(spec.severity - severity) < NEAR);
  return causes
    .filter((cause) => cause !== NOTHING_WRONG)
    .filter((cause) => ensemble.some((spec) => spec.cause === cause && spec.both === undefined))
    .flatMap((cause) =>
      SEVERITIES.filter((severity) => !isThere(cause, severity)).map((severity) => ({ cause, severity })),
    );
}
