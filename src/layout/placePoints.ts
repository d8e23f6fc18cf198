/** Where each place of the loop lies in the bay: parts, lines at their clearest run, ports, and joints (`LINE-PART`). */
import type { Layout, PointMm } from './layout';
import { stopsOf } from './order';
import { loopLines } from './trace';

export function placePoints(layout: Layout): ReadonlyMap<string, PointMm> {
  const ends = loopLines(layout).flatMap(({ id, from, to, way }) => [
    [`${id}-${from}`, pointOf(way[0])] as const,
    [`${id}-${to}`, pointOf(way[way.length - 1])] as const,
  ]);
  return new Map([...stopsOf(layout).map(({ id, at }) => [id, at] as const), ...ends]);
}

const pointOf = ([x, y]: readonly number[]): PointMm => [x, y];
