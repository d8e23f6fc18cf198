/**
 * Who is suspected of a scenario's car: the ensemble that its score is weighed with, all that may be wrong with such a car
 * and, where two things are hidden, that pair. A leak that only a search tells is a short loop to any reading.
 */
import { faultIds } from '../../faults/registry';
import type { Scenario } from '../../session/scenario/scenario';
import { ensembleAt, type GhostSpec, pairOf } from '../../suspects/causes';
import { isFoundBySearch } from '../../suspects/proven';
import { ghostOptions } from './ghostOptions';

const SHORT = 'low-charge';

export function suspectsIn(scenario: Scenario, seed: number): readonly GhostSpec[] {
  return [...ensembleAt(ghostOptions(scenario.data, seed)), ...pairOf(hiddenAsRead(scenario))];
}

/** In the registry's order, each once. */
export function hiddenAsRead({ answer }: Scenario): readonly string[] {
  const hidden = (answer.hidden ?? []).map((cause) => (isFoundBySearch(cause) ? SHORT : cause));
  return faultIds.filter((cause) => hidden.includes(cause));
}
