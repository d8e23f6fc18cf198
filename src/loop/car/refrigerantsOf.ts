/** The fluids whose tables a car needs: what is in its loop, and what is sealed in the bulb of its expansion valve. */
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import type { VehicleData } from './vehicles';

/** Each once, the loop's own first. A fluid only mixed in needs none. */
export function refrigerantsOf(
  { metering }: Pick<VehicleData, 'metering'>,
  ...inLoop: readonly RefrigerantId[]
): readonly RefrigerantId[] {
  const bulb = metering.kind === 'expansion-valve' ? [metering.bulbFluid] : [];
  return [...new Set([...inLoop, ...bulb])];
}
