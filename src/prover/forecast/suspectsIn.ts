/**
 * Who is suspected of a scenario's car: the ensemble that its score is weighed with, all that may be wrong with such a car
 * and, where two things are hidden, that pair. A leak that only a search tells is a short loop to any reading.
 */
import { faultIds } from '../../faults/registry';
import type { Scenario } from '../../session/scenario/scenario';
import { ensembleAt, type GhostSpec, pairOf } from '../../suspects/causes';
import { isFoundBySearch, SHORT } from '../../suspects/proven';
import { ghostOptions } from './ghostOptions';

export function suspectsIn(scenario: Scenario, seed: number): readonly GhostSpec[] {
  return [...ensembleAt(ghostOptions(scenario.data, seed)), ...pairOf(hiddenAsRead(scenario))];
}

/**
 * Severities at which some causes show what no line between the ensemble's own would: a restriction is nearly open and a
 * little further on nearly shut, a switch lets the clutch come and go before it never lets it in. Who holds one severity for
 * all readings needs them; a score, which lets each reading lean on another, does not.
 */
const BETWEEN: Readonly<Record<string, number>> = {
  'drier-restricted': 0.42,
  'liquid-line-restricted': 0.42,
  'restricted-orifice': 0.35,
  'txv-stuck-closed': 0.35,
  'bulb-charge-lost': 0.35,
  'low-switch-wrong': 0.2,
  'missing-orifice': 0.95,
};

/** Those that somebody has in mind who asks. */
export function suspectsAsked(scenario: Scenario, seed: number): readonly GhostSpec[] {
  const suspects = suspectsIn(scenario, seed);
  const more = Object.entries(BETWEEN).map(([cause, severity]): GhostSpec => ({ cause, severity }));
  return [...suspects, ...more.filter((one) => suspects.some(({ cause }) => cause === one.cause))];
}

export const asRead = (cause: string): string => (isFoundBySearch(cause) ? SHORT : cause);

/** In the registry's order, each once. */
export function hiddenAsRead({ answer }: Scenario): readonly string[] {
  const hidden = (answer.hidden ?? []).map(asRead);
  return faultIds.filter((cause) => hidden.includes(cause));
}
