/** What a chosen place says: a point its numbers, a stretch what is done to each kilogram on the way. */
import { type DisplayUnits, plainNumber } from '../../instruments/displayUnits';
import { endsOf, pointOf, type SpotId } from '../../instruments/loop/spots';
import { isKnown, type StatePoint } from '../../instruments/phGeometry';
import type { SaturationLine } from '../../instruments/saturation';
import { word } from '../../words/words';
import { phaseWords } from '../insideWords';
import type { POINT_NUMBERS } from './insideState';
import { pointWord, pressureWords, temperatureWords } from './PointTable';

const WHERE = {
  p1: () => word('inside.where.p1'),
  p2: () => word('inside.where.p2'),
  p3: () => word('inside.where.p3'),
  p4: () => word('inside.where.p4'),
} as const;

export function spotWords(
  spot: SpotId,
  points: readonly StatePoint[],
  line: SaturationLine,
  units: DisplayUnits,
): string {
  const number = pointOf(spot) as (typeof POINT_NUMBERS)[number] | null;
  if (number !== null) {
    const point = points[number - 1];
    if (!isKnown(point)) return pointWord(number);
    return word('inside.spot.point', {
      number: String(number),
      name: pointWord(number),
      pressure: pressureWords(point, number, units),
      temperature: temperatureWords(point, units),
      phase: phaseWords(line, point),
      where: WHERE[spot as keyof typeof WHERE](),
    });
  }
  const [from, to] = (endsOf(spot) ?? [1, 2]).map((end) => points[end - 1]);
  const kilojoules = plainNumber(Math.abs(to.enthalpyJPerKg - from.enthalpyJPerKg) / 1000);
  if (spot === 'compressor') return word('inside.spot.compressor', { kilojoules });
  if (spot === 'condenser') return word('inside.spot.condenser', { kilojoules });
  if (spot === 'evaporator') return word('inside.spot.evaporator', { kilojoules });
  return word('inside.spot.metering');
}
