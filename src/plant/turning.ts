/** What turns in the bay, as an eye would see it. */
import type { Car } from '../loop/car/car';
import type { CarNumber } from '../loop/car/carNumbers';

const SEEN_TURNING = 0.05;
const SPEEDS = ['fanSpeed0', 'fanSpeed1', 'fanSpeed2'] as const satisfies readonly CarNumber[];

/** Whether the fan drawn as `part` turns; false for a part that is no fan. */
export function fanTurning(car: Car, part: string): boolean {
  return fanSpeedShare(car, part) > SEEN_TURNING;
}

/** Of its full speed; 0 for a part that is no fan. */
export function fanSpeedShare(car: Car, part: string): number {
  const index = car.vehicle.condenserAir.fans.findIndex((fan) => fan.part === part);
  return index < 0 ? 0 : car.number(SPEEDS[index]);
}

export function hubTurning(car: Car): boolean {
  return car.number('compressorRevPerS') > 0;
}
