/**
 * Where each place of the loop lies in the bay: parts, lines at their clearest run, ports, and joints (`LINE-PART`). A
 * compressor leaks at its shaft: behind the pulley.
 */
import type { Layout, PointMm } from './layout';
import { stopsOf } from './order';
import { loopLines } from './trace';

const SHAFT_FROM_PART: Readonly<Record<string, PointMm>> = {
  'compressor-front': [0, -46],
  'compressor-side': [60, 10],
};

export function placePoints(layout: Layout): ReadonlyMap<string, PointMm> {
  const ends = loopLines(layout).flatMap(({ id, from, to, way }) => [
    [`${id}-${from}`, pointOf(way[0])] as const,
    [`${id}-${to}`, pointOf(way[way.length - 1])] as const,
  ]);
  const shafts = layout.parts.flatMap(({ id, kind, at }) => {
    const off = SHAFT_FROM_PART[kind];
    return off ? [[id, [at[0] + off[0], at[1] + off[1]] as PointMm] as const] : [];
  });
  return new Map([...stopsOf(layout).map(({ id, at }) => [id, at] as const), ...ends, ...shafts]);
}

const pointOf = ([x, y]: readonly number[]): PointMm => [x, y];
