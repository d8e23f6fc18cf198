/** Surface of the loop's pipes, and of what lies behind a restriction: as cold as what boils there. */
import type { CarPart } from '../loop/car/assembleLoop';
import type { Car } from '../loop/car/car';
import { hasDrier } from '../loop/car/meterEdits';

/** At the end of a part, K. Behind a clogged drier the whole liquid line is of another pressure than the rest. */
export function pipeWallK(
  { network, loop, vehicle }: Car,
  { part, vessel, firstCell, cells }: CarPart,
): number {
  const ownK = network.wallTemperatureK(vessel, firstCell + cells - 1);
  if (part !== 'liquid' || !hasDrier(vehicle)) return ownK;
  // 0 before the first step
  return network.meter(loop.metering, 'behindDrierK') || ownK;
}
