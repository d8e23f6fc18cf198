/**
 * Where a clamp thermometer goes on: every line and vessel of the loop that stands in the open bay, the end of the liquid
 * line right before the metering device, and the stub between device and coil.
 */
import { type CarPart, partNamed } from '../loop/car/assembleLoop';
import type { Car } from '../loop/car/car';
import { pipeWallK } from './pipeWallK';

const LINE_END = 'liquid-end';
const COIL_INLET = 'evaporator-inlet';

export function linePlaces(car: Car): readonly string[] {
  return [...car.loop.parts.filter(isReached).map(({ part }) => part), LINE_END, COIL_INLET];
}

/** Of the pipe's wall at a place, K; NaN where there is no such place. */
export function placeWallK(car: Car, place: string): number {
  const { network, loop } = car;
  if (place === LINE_END) return lineEndK(car);
  if (place === COIL_INLET) {
    const { vessel, firstCell } = partNamed(loop.parts, 'evaporator');
    return network.temperatureK(vessel, firstCell);
  }
  const found = loop.parts.find(({ part }) => part === place);
  return found && isReached(found) ? pipeWallK(car, found) : Number.NaN;
}

/** The liquid line's wall at its end, behind whatever is in its way, K. */
export function lineEndK(car: Car): number {
  const { network, loop } = car;
  return network.meter(loop.metering, 'lineEndK') || pipeWallK(car, partNamed(loop.parts, 'liquid'));
}

function isReached({ around, part }: CarPart): boolean {
  return around === 'bay' && part !== 'compressor';
}
