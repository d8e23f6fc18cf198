/** What is wrong in what was written of the old label, and on a conversion's new one: how many of their lines. */
import { OIL_KG_PER_M3, OIL_KINDS } from '../equipment/oils';
import type { PlantParts } from './assemblePlant';
import { dueNow } from './due';
import { loopOilKg, oilNow } from './oilBook';

/** How far off a written figure may be: a scale and rounding, and an oil bottle. */
const OLD_KG = 0.01;
const OLD_M3 = 5e-6;
const LABEL_M3 = 30e-6;

const OLD_LINES = 2;
const LABEL_LINES = 4;

const wrong = (...lines: readonly boolean[]): number => lines.filter((isRight) => !isRight).length;

/** Of two lines, charge and oil; both where nothing was written. */
export function oldMistakes({ car, desk }: PlantParts): number {
  const { old } = desk.tasks.conversion;
  if (old === null) return OLD_LINES;
  const { label } = car.vehicle;
  return wrong(Math.abs(old.kg - label.charge) <= OLD_KG, Math.abs(old.m3 - label.oilAmount) <= OLD_M3);
}

/** Of four lines, against what is in the loop now; all where nothing was written. */
export function labelMistakes(parts: PlantParts): number {
  const { car, desk } = parts;
  const { label } = desk.tasks.conversion;
  if (label === null) return LABEL_LINES;
  const { network, loop, vehicle } = car;
  const due = dueNow(vehicle, desk);
  const { kg } = oilNow(parts);
  const mostOf = OIL_KINDS.reduce((most, kind) => (kg[kind] > kg[most] ? kind : most));
  const heldKg = network.chargeKg(loop.high) + network.chargeKg(loop.low);
  return wrong(
    label.refrigerant === due.refrigerant,
    Math.abs(label.kg - heldKg) <= due.toleranceKg,
    label.oil === mostOf,
    Math.abs(label.m3 - loopOilKg(parts) / OIL_KG_PER_M3[mostOf]) <= LABEL_M3,
  );
}
