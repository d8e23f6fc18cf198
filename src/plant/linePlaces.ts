/** Where a clamp thermometer goes on: every line and vessel of the loop that stands in the open bay. */
import type { CarPart } from '../loop/car/assembleLoop';
import type { Car } from '../loop/car/car';

export function linePlaces(car: Car): readonly CarPart[] {
  return car.loop.parts.filter(({ around, part }) => around === 'bay' && part !== 'compressor');
}

export function placeNamed(car: Car, name: string): CarPart | undefined {
  return linePlaces(car).find(({ part }) => part === name);
}
