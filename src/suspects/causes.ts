/**
 * Which cars an ensemble has: the sound one, and every fault that this vehicle can have at three severities. What is not
 * in the registry of faults is no suspect, nor is what only a search tells. Three severities are enough to bracket one in between, since a reading is
 * weighed against all of them; the mildest is about where signs begin to show.
 */
import { faultsFor } from '../faults/registry';
import { vehicleOf } from '../loop/car/vehicles';
import { NOTHING_WRONG } from '../plant/faultBook';

/** One car of an ensemble: the cause it stands for, and how bad; a sound car has a severity of 0. */
export interface GhostSpec {
  readonly cause: string;
  readonly severity: number;
}

const SEVERITIES: readonly number[] = [0.4, 0.7, 1];

/** The sound car first, then faults in the registry's order. Throws `RangeError` for an unknown vehicle. */
export function ensembleFor(
  vehicleId: string,
  severities: readonly number[] = SEVERITIES,
): readonly GhostSpec[] {
  const told = faultsFor(vehicleOf(vehicleId)).filter(({ toldBy }) => toldBy !== 'search');
  const faulty = told.flatMap(({ id }) =>
    severities.map((severity) => ({ cause: id, severity })),
  );
  return [{ cause: NOTHING_WRONG, severity: 0 }, ...faulty];
}

/** Each cause once, in the order of the ensemble. */
export const causesOf = (ensemble: readonly GhostSpec[]): readonly string[] => [
  ...new Set(ensemble.map(({ cause }) => cause)),
];
