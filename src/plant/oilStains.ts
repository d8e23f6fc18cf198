/**
 * Oil that lies outside where the loop leaks, on dust that makes it seen. What comes out in the session is what the leak
 * vents; what lies there when the car comes is the oil that went with the refrigerant it lacks, 30 g a kg, shared between
 * the leaks by area [guess]. A new part and a cleaned one have none.
 */
import { holesWith } from '../faults/applyFaults';
import type { PlantParts } from './assemblePlant';
import { comesWith } from './comesWith';
import { STEP_S } from './stepTime';
import { OIL_OUT_AT } from './tally';

/** As vapour carries it out of a loop, kg to a kg. */
const OIL_IN_VAPOUR = 0.03;
/** A patch as wide as a hand, which is as much as an eye tells [guess]. */
const PLAIN_KG = 0.003;

/** Once, when the car comes. */
export function foundStains({ car, faults, options, places, tally }: PlantParts): void {
  const begun = options.faults.filter(({ onsetStep }) => onsetStep === 0);
  const holes = holesWith(begun, car);
  const labelKg = car.vehicle.label.charge;
  const holdsKg =
    options.start === 'evacuated'
      ? 0
      : faults.filling({ ...EMPTY, refrigerant: options.refrigerant, chargeKg: options.chargeKg }).chargeKg;
  const oilKg = Math.max(0, labelKg - holdsKg) * OIL_IN_VAPOUR;
  const areaM2 = holes.reduce((sum, hole) => sum + hole.areaM2, 0);
  for (const hole of holes) {
    const index = places.findIndex(({ id }) => hole.id === `leak:${id}`);
    if (index >= 0) tally[OIL_OUT_AT + index] = (oilKg * hole.areaM2) / areaM2;
  }
}

const EMPTY = { airKg: 0, waterKg: 0, extraOilKg: 0 } as const;

/** Once a second. */
export function keepStains({ car: { network }, places, tally }: PlantParts): void {
  places.forEach(({ id }, index) => {
    const link = network.linkNamed(`leak:${id}`);
    if (link >= 0) tally[OIL_OUT_AT + index] += network.oilVentedKg(link) / STEP_S;
  });
}

/** A new part comes clean, with its own seals; so is a part that has been washed. */
export function wipeStains({ layout, places, tally }: PlantParts, part: string): void {
  places.forEach(({ id }, index) => {
    if (comesWith(layout, part, id)) tally[OIL_OUT_AT + index] = 0;
  });
}

/** 0 none .. 1 plain. */
export function stainShare({ tally }: PlantParts, index: number): number {
  return tally[OIL_OUT_AT + index] / PLAIN_KG;
}
