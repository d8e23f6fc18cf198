/**
 * From the coils to the vents. The temperature control, or a door that does not shut, lets a share of the front air past the hot heater
 * core, so what comes out is warm though the coil is cold:
 *
 *   T = (1 - d) T_coil + d (T_coil + eps (T_coolant - T_coil)),  eps = 0.8 [guess], coolant as warm as the engine
 *
 * Ducts then warm the air towards the interior. A rear unit has no heater.
 */
import { AT } from './carNumbers';

const HEATER_REACHES = 0.8;
/** Ducts warm the air towards the interior by this share before it leaves the vents [guess]. */
const DUCT_SHARE = 0.1;

export function stepVents(r: Float64Array): void {
  const coil = r[AT.coilOutletK];
  const past = Math.min(1, r[AT.doorLeak] + r[AT.heaterShare]);
  const mixed = coil + past * HEATER_REACHES * (r[AT.engineK] - coil);
  r[AT.ventK] = mixed + DUCT_SHARE * (r[AT.interiorK] - mixed);
  const rear = r[AT.rearOutletK];
  r[AT.rearVentK] = rear + DUCT_SHARE * (r[AT.interiorK] - rear);
}
