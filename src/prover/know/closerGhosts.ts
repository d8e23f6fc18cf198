/**
 * Ghosts for a closer look, where no single one of the ensemble shows what was seen: the likeliest causes at severities
 * between and below; then two causes at once, of which one is among the likeliest. Which pairs are worth living is told by
 * adding what each does to a sound car; only the best of them are lived.
 */

import { clash } from '../../faults/registry';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { causesIn, type GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import { logOdds } from '../forecast/logOdds';
import type { Seen } from './doubtOf';

const SEVERITIES = [0.15, 0.3, 0.45, 0.7, 1];
const PAIRS_LIVED = 10;
const AND = '+';

/** `causes`: the likeliest. */
export function finerGhosts(ensemble: readonly GhostSpec[], causes: readonly string[]): readonly GhostSpec[] {
  const single = causes.filter((cause) => cause !== NOTHING_WRONG && causesIn(cause).length === 1);
  const near = (cause: string, severity: number): boolean =>
    ensemble.some((spec) => spec.cause === cause && Math.abs(spec.severity - severity) < 0.06);
  return single
    .filter((cause) => ensemble.some((spec) => spec.cause === cause && spec.both === undefined))
    .flatMap((cause) =>
      SEVERITIES.filter((severity) => !near(cause, severity)).map((severity) => ({ cause, severity })),
    );
}

export function pairedGhosts(
  ensemble: readonly GhostSpec[],
  causes: readonly string[],
  seen: readonly Seen[],
  forecast: Forecast,
  atmospherePa: number,
): readonly GhostSpec[] {
  const sound = ensemble.find(({ cause }) => cause === NOTHING_WRONG);
  if (!sound) return [];
  const sick = ensemble.filter((spec) => spec !== sound && spec.both === undefined);
  const pairs = sick
    .filter(({ cause }) => causes.includes(cause))
    .flatMap((a) =>
      sick
        .filter((b) => b.cause !== a.cause && (!causes.includes(b.cause) || b.cause > a.cause))
        .filter((b) => clash([a.cause, b.cause]) === undefined)
        .map((b) => [a, b] as const),
    );
  const fitOf = (a: GhostSpec, b: GhostSpec): number =>
    seen.reduce((sum, { probe, value }) => {
      const [none, one, other] = [sound, a, b].map((spec) => forecast.shows(spec, probe));
      const together = probe.unit === 'look' ? (one === none ? other : one) : one + other - none;
      return sum + logOdds(probe, value, together, atmospherePa);
    }, 0);
  return pairs
    .map(([a, b]) => ({ a, b, fit: fitOf(a, b) }))
    .sort((one, other) => other.fit - one.fit)
    .slice(0, PAIRS_LIVED)
    .map(({ a, b }) => ({
      cause: [a.cause, b.cause].sort().join(AND),
      severity: Math.max(a.severity, b.severity),
      both: [a, b].map(({ cause, severity }) => ({ cause, severity })),
    }));
}
