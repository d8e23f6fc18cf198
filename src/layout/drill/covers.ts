/** Panels that lie over a stretch of the loop, sometimes over a port: they are lifted to see on. */
import type { Part, PointMm } from '../layout';
import type { Draws } from './draws';
import type { DrillCover, DrillLevel, LoopRun } from './drill';
import { toRect } from './geometry';

const COVER_FROM_LEVEL = 3;
const HALF_MM = { long: 84, short: 62 } as const;
const FROM_PORT_MM = 46;
const ON_PORT_SHARE = 0.3;
const TRIES = 8;

export interface Covers {
  readonly covers: readonly DrillCover[];
  readonly parts: readonly Part[];
}

export function coversFor(
  draws: Draws,
  level: DrillLevel,
  runs: readonly LoopRun[],
  ports: readonly PointMm[],
): Covers {
  const covers: DrillCover[] = [];
  const count = level < COVER_FROM_LEVEL ? 0 : draws.whole(0, level - 2);
  for (let tries = 0; covers.length < count && tries < TRIES; tries++) {
    const onPort = draws.chance(ON_PORT_SHARE);
    const at = onPort ? draws.pick(ports) : bendOf(draws, runs);
    const rect = [at[0] - HALF_MM.short, at[1] - HALF_MM.long, 2 * HALF_MM.short, 2 * HALF_MM.long] as const;
    const isFree =
      covers.every(({ rect: other }) => toRect(at, other) > 2 * HALF_MM.long) &&
      at[1] < 690 &&
      at[1] > 180 &&
      (onPort || ports.every((port) => toRect(port, rect) > FROM_PORT_MM));
    if (isFree) covers.push({ id: `cover-${covers.length + 1}`, rect });
  }
  return {
    covers,
    parts: covers.map(({ id, rect: [x, y, w, h] }) => ({
      id,
      kind: 'filter-lid',
      name: 'cover',
      at: [x, y],
      z: 13.6,
      size: { w, h },
      hit: [x, y, w, h],
    })),
  };
}

function bendOf(draws: Draws, runs: readonly LoopRun[]): PointMm {
  const { way } = draws.pick(runs);
  return way[draws.whole(1, Math.max(1, way.length - 2))];
}
