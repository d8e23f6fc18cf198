/** What of the trainee's own lies within reach, with its place and size: couplers, free ends, the can and the scale. */
import type { Layout } from '../layout/layout';
import { type BayFrame, hasCoupler } from './bayFrame';
import { HANDLE_END_MM } from './drawing/gear/coupler';
import type { Gear } from './gesture/underPointer';
import { freeEndAt } from './hose/freeEndAt';
import { CAN, CAN_TILT, CAN_VALVE, couplerId, endId, SCALE } from './itemIds';
import type { BayScene } from './scene/bayScene';

const COUPLER_R_MM = 40;
/** On the mat it lies on its side, as long as it is, and may be taken by its handle. */
const LYING_R_MM = HANDLE_END_MM;
const CAN_R_MM = 50;
const SMALL_R_MM = 32;
/** The end of a hose: under half of what two of them lie apart. */
const END_R_MM = 24;

export function gearOf(layout: Layout, scene: BayScene, frame: BayFrame): Gear[] {
  const gear: Gear[] = [];
  for (const hose of frame.hoses.filter(hasCoupler)) {
    const at = scene.hoses[hose.id].couplerAt();
    const r = hose.port === null ? LYING_R_MM : COUPLER_R_MM;
    if (at) gear.push({ id: couplerId(hose.id), takeable: true, from: hose.port, at, r });
  }
  for (const inlet of frame.ends ?? [])
    gear.push({
      id: endId(inlet),
      takeable: true,
      from: null,
      at: freeEndAt(layout, frame, inlet),
      r: END_R_MM,
    });
  const [joint, onto] = [scene.can.jointAt(), frame.can?.onto];
  if (joint && onto) gear.push({ id: endId(onto), takeable: true, from: CAN, at: joint, r: END_R_MM });
  const [can, valve, dial] = [scene.can.canAt(), scene.can.valveAt(), scene.can.dialAt()];
  if (valve) gear.push({ id: CAN_VALVE, takeable: false, from: null, at: valve, r: SMALL_R_MM });
  if (dial) gear.push({ id: CAN_TILT, takeable: false, from: null, at: dial, r: SMALL_R_MM });
  if (can) gear.push({ id: CAN, takeable: true, from: null, at: can, r: CAN_R_MM });
  const scale = scene.can.scaleAt();
  if (scale) gear.push({ id: SCALE, takeable: false, from: null, at: scale, r: CAN_R_MM });
  return gear;
}
