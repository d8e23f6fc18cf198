/**
 * Which cars an ensemble has: the sound one, and every fault that this vehicle can have, about 50 in all. Most stand at
 * two severities, a plainly sick car and the worst but one; what lies between leans on either, since a reading is weighed
 * against both. What is there or not, or shows one thing however bad it is, stands once; a shortage, whose signs change
 * on the way, three times. What only a search tells is no suspect. A fault with a place of its own stands in its usual
 * one. One fault a car: two at once are not in the ensemble.
 */
import { faultsFor } from '../faults/registry';
import { vehicleOf } from '../loop/car/vehicles';
import { NOTHING_WRONG } from '../plant/faultBook';

/** One car of an ensemble: the cause it stands for, and how bad; a sound car has a severity of 0. */
export interface GhostSpec {
  readonly cause: string;
  readonly severity: number;
}

const USUAL: readonly number[] = [0.55, 0.9];

const OWN: Readonly<Record<string, readonly number[]>> = {
  'low-charge': [0.4, 0.65, 0.9],
  'wrong-refrigerant': [0.5],
  'too-much-oil': [0.7],
  'too-little-oil': [0.7],
  moisture: [0.8],
  leak: [0.5],
  'condenser-fan-dead': [0.6, 1],
  'condenser-fan-slow': [0.8],
  'condenser-fan-late': [0.7],
  'coil-iced': [0.9],
  'missing-orifice': [0.6],
  'clutch-not-engaging': [1],
  'clutch-stuck-on': [1],
};

/**
 * The sound car first, then faults in the registry's order; `severities` instead of each fault's own. Throws `RangeError`
 * for an unknown vehicle.
 */
export function ensembleFor(vehicleId: string, severities?: readonly number[]): readonly GhostSpec[] {
  const told = faultsFor(vehicleOf(vehicleId)).filter(({ toldBy }) => toldBy !== 'search');
  const faulty = told.flatMap(({ id }) =>
    (severities ?? OWN[id] ?? USUAL).map((severity) => ({ cause: id, severity })),
  );
  return [{ cause: NOTHING_WRONG, severity: 0 }, ...faulty];
}

/** Each cause once, in the order of the ensemble. */
export const causesOf = (ensemble: readonly GhostSpec[]): readonly string[] => [
  ...new Set(ensemble.map(({ cause }) => cause)),
];
