/** The fluids whose tables a car needs: what is in its loop, and what is sealed in the bulbs of its expansion valves. */
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import type { VehicleData } from './vehicles';

/** Each once, the loop's own first. A fluid only mixed in needs none. */
export function refrigerantsOf(
  { metering, rear }: Pick<VehicleData, 'metering' | 'rear'>,
  ...inLoop: readonly RefrigerantId[]
): readonly RefrigerantId[] {
  const bulbs = [metering, rear?.metering].flatMap((meter) =>
    meter?.kind === 'expansion-valve' ? [meter.bulbFluid] : [],
  );
  return [...new Set([...inLoop, ...bulbs])];
}
