/** What eyes and ears have of the parts that move air: how fast a fan turns, the blower's hum, dirt where one can look. */
import type { Car } from '../../loop/car/car';
import { fanSpeedShare } from '../turning';
import { seen } from './seen';
import { flag, type Signal, signal } from './signal';

const HEARD_FROM = 0.05;

export function airCues(car: Car): Signal[] {
  const dirt = (part: string, airShare: () => number): Signal =>
    signal(`dirt.${part}`, '1', 'cue', () => seen(1 - airShare()));
  return [
    ...car.vehicle.condenserAir.fans.map(({ part }) =>
      signal(`fan.${part}.speedRatio`, '1', 'cue', () => seen(fanSpeedShare(car, part))),
    ),
    flag(
      'blower.turning',
      'cue',
      () => car.number('blowerStep') > 0 && car.number('blowerHealth') > HEARD_FROM,
    ),
    dirt('condenser', () => car.number('condenserAirHealth')),
    dirt('cabin-filter', () => car.number('filterHealth')),
    dirt('evaporator', () => car.number('coilAirHealth')),
  ];
}
