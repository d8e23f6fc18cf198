/** The fluids whose tables a car needs: what is in its loop, and what is sealed in the bulb of its expansion valve. */
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import type { VehicleData } from './vehicles';

/** Each once, the loop's own first. */
export function refrigerantsOf(
  { metering }: Pick<VehicleData, 'metering'>,
  inLoop: RefrigerantId,
): readonly RefrigerantId[] {
  if (metering.kind !== 'expansion-valve' || metering.bulbFluid === inLoop) return [inLoop];
  return [inLoop, metering.bulbFluid];
}
