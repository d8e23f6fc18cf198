/**
 * Which cars an ensemble has: the sound one, and every fault that this vehicle can have, about 50 in all. Most stand at
 * two severities, a plainly sick car and the worst but one; what lies between leans on either, since a reading is weighed
 * against both. What is there or not, or shows one thing however bad it is, stands once; a shortage, whose signs change
 * on the way, three times. What only a search tells is no suspect. A fault with a place of its own stands in its usual
 * one. One fault a car; two at once only where a scenario hides two, and only those.
 *
 * Before anything is read each fault is as likely as any other, and one car in ten has nothing wrong with its loop: common
 * practice, no source. Nobody knows how often each fault comes into a bay, and an even share favours none.
 */
import { purely } from '../faults/fault';
import { faultOf, faultsFor } from '../faults/registry';
import { vehicleOf } from '../loop/car/vehicles';
import type { PlantOptions } from '../plant/buildPlant';
import { NOTHING_WRONG } from '../plant/faultBook';

/** One car of an ensemble: the cause it stands for, and how bad; a sound car has a severity of 0. */
export interface GhostSpec {
  readonly cause: string;
  readonly severity: number;
  /** Its faults where they are two; `cause` names both then. */
  readonly both?: readonly { readonly cause: string; readonly severity: number }[];
}

const NOTHING_PRIOR = 0.1;
const AND = '+';

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

/**
 * Of a car with this bench: a loop of two refrigerants is no suspect where the bench brings another already, since the
 * model knows two at once.
 */
export function ensembleAt({
  vehicleId,
  refrigerant,
  bench,
}: Pick<PlantOptions, 'vehicleId' | 'refrigerant' | 'bench'>): readonly GhostSpec[] {
  const ensemble = ensembleFor(vehicleId);
  if ((bench.refrigerant ?? refrigerant) === refrigerant) return ensemble;
  const pure = purely(refrigerant, 1);
  return ensemble.filter(({ cause, severity }) => {
    if (cause === NOTHING_WRONG) return true;
    const filling = faultOf(cause).contents?.(pure, severity, vehicleOf(vehicleId)) ?? pure;
    return filling.refrigerant === refrigerant && filling.foreign === undefined;
  });
}

/** Cars with two faults at once, plainly sick and the worst but one; none for any other number of faults. */
export function pairOf(hidden: readonly string[]): readonly GhostSpec[] {
  if (hidden.length !== 2) return [];
  return USUAL.map((severity) => ({
    cause: suspectOf(hidden),
    severity,
    both: hidden.map((cause) => ({ cause, severity })),
  }));
}

/** Causes that stand together, as one suspect. */
export const suspectOf = (causes: readonly string[]): string => causes.join(AND);

/** The causes a suspect stands for: one, or the two of a pair. */
export const causesIn = (suspect: string): readonly string[] => suspect.split(AND);

/** What is believed of each before anything is read. */
export function priorsOf(causes: readonly string[]): readonly number[] {
  const others = causes.filter((cause) => cause !== NOTHING_WRONG).length;
  if (others === causes.length) return causes.map(() => 1 / others);
  if (others === 0) return [1];
  return causes.map((cause) => (cause === NOTHING_WRONG ? NOTHING_PRIOR : (1 - NOTHING_PRIOR) / others));
}

/** Each cause once, in the order of the ensemble. */
export const causesOf = (ensemble: readonly GhostSpec[]): readonly string[] => [
  ...new Set(ensemble.map(({ cause }) => cause)),
];
