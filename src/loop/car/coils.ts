/** The coils of a car: the one behind the dashboard, and the rear one where there is a rear unit. */
import { type CarLoop, partNamed } from './assembleLoop';
import { FRONT_COIL, REAR_COIL } from './carNumbers';
import type { Coil } from './coilAir';
import type { VehicleData } from './vehicles';

/** The front coil's case stands on the firewall with the engine's heat behind it and the pipes through it, W/K [guess]. */
const CASE_W_PER_K = 6.5;

export function coilsOf(
  vehicle: VehicleData,
  loop: CarLoop,
): { readonly front: Coil; readonly rear: Coil | null } {
  const { evaporatorAir, rear } = vehicle;
  const front = partNamed(loop.parts, 'evaporator');
  return {
    front: { part: front, air: evaporatorAir, at: FRONT_COIL, caseWPerK: CASE_W_PER_K },
    rear: rear
      ? { part: partNamed(loop.parts, rear.parts[0].part), air: rear.air, at: REAR_COIL, caseWPerK: 0 }
      : null,
  };
}
