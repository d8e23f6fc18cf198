/**
 * The hidden faults of one car: which there are, since when, and what a new part has cleared. The car is touched only when
 * something changes.
 */
import { fillingWith, settleFaults } from '../faults/applyFaults';
import type { ActiveFault, Filling } from '../faults/fault';
import { clash, faultOf, faultsFor } from '../faults/registry';
import type { Layout } from '../layout/layout';
import { placesOf } from '../layout/placesOf';
import type { Car } from '../loop/car/car';
import type { VehicleData } from '../loop/car/vehicles';
import type { HiddenFault } from './buildPlant';
import { comesWith } from './comesWith';

/** Named when there is nothing to find. */
export const NOTHING_WRONG = 'nothing-wrong';

export interface FaultBook {
  /** Causes that may be named for this car. */
  readonly causes: readonly string[];
  /** Parts and lines of this car that can be changed for new. */
  readonly replaceable: readonly string[];
  /** Parts that dirt gathers on. */
  readonly cleanable: readonly string[];
  filling(sound: Filling): Filling;
  /** Brings the car to what the faults that have begun and are not mended leave of it; whether there was anything to do. */
  settle(car: Car, step: number): boolean;
  /** Whether there is a way out of the loop that nobody has mended. */
  leaks(): boolean;
  /** Ids of those that have begun and are not mended. */
  remaining(step: number): readonly string[];
  repair(part: string): void;
  clean(part: string): void;
  /** Which of the hidden faults are mended, by their place in the list, for snapshots. */
  mended(): readonly number[];
  restore(mended: readonly number[]): void;
}

/** Throws `RangeError` for an unknown fault, one that cannot be in this car, or two that exclude each other. */
export function openFaultBook(
  vehicle: VehicleData,
  layout: Layout,
  hidden: readonly HiddenFault[],
): FaultBook {
  refuse(vehicle, hidden);
  const possible = faultsFor(vehicle);
  const known = placesOf(layout);
  const parts = new Set(possible.flatMap(({ clearedBy }) => clearedBy.filter((part) => known.has(part))));
  const mended = new Set<number>();
  // the step from which it has to look again: at once, or when the next fault begins
  let lookAt = 0;
  return {
    causes: [...possible.map(({ id }) => id), NOTHING_WRONG],
    replaceable: [...parts],
    cleanable: [...new Set(possible.flatMap(({ cleanedAt }) => cleanedAt ?? []))],
    filling: (sound) => fillingWith(hidden, vehicle, sound),
    settle(car, step) {
      if (step < lookAt) return false;
      lookAt = Math.min(
        ...hidden.map(({ onsetStep }) => (onsetStep > step ? onsetStep : Number.POSITIVE_INFINITY)),
      );
      settleFaults(
        car,
        hidden.filter(({ onsetStep }, index) => onsetStep <= step && !mended.has(index)),
      );
      return true;
    },
    leaks: () => hidden.some(({ id }, index) => faultOf(id).links !== undefined && !mended.has(index)),
    remaining: (step) =>
      hidden.filter(({ onsetStep }, index) => onsetStep <= step && !mended.has(index)).map(({ id }) => id),
    repair(part) {
      hidden.forEach((fault, index) => {
        if (mends(layout, part, fault)) mended.add(index);
      });
      lookAt = 0;
    },
    clean(part) {
      hidden.forEach(({ id }, index) => {
        if (faultOf(id).cleanedAt?.includes(part)) mended.add(index);
      });
      lookAt = 0;
    },
    mended: () => [...mended].sort((a, b) => a - b),
    restore(indices) {
      mended.clear();
      for (const index of indices) mended.add(index);
      lookAt = 0;
    },
  };
}

/** A leak is mended where it is; any other fault by any of the parts that carry it. */
export function mends(layout: Layout, part: string, { id, site }: Pick<ActiveFault, 'id' | 'site'>): boolean {
  const { clearedBy, usualSite } = faultOf(id);
  return usualSite === undefined ? clearedBy.includes(part) : comesWith(layout, part, site ?? usualSite);
}

function refuse(vehicle: VehicleData, hidden: readonly HiddenFault[]): void {
  for (const { id } of hidden) {
    if (!faultOf(id).applies(vehicle)) throw new RangeError(`fault "${id}" cannot be in a ${vehicle.id}`);
  }
  const pair = clash(hidden.map(({ id }) => id));
  if (pair) throw new RangeError(`faults "${pair[0]}" and "${pair[1]}" cannot be in one car`);
}
