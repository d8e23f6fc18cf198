/** What else stands in a bay, put where no pipe runs: battery, boxes, bottles, the brake booster. */
import type { Part, PointMm, RectMm } from '../layout';
import type { Draws } from './draws';
import { overlap, rectToWay } from './geometry';

interface Thing {
  readonly id: string;
  readonly kind: string;
  readonly w: number;
  readonly h: number;
  /** Height of its front wall, which also covers what lies below. */
  readonly wall: number;
  readonly z: number;
  readonly size: Readonly<Record<string, number>>;
}

const THINGS: readonly Thing[] = [
  { id: 'battery', kind: 'battery', w: 176, h: 140, wall: 46, z: 7, size: { w: 176, h: 140 } },
  { id: 'airbox', kind: 'airbox', w: 170, h: 148, wall: 40, z: 7, size: { w: 170, h: 148 } },
  { id: 'fusebox', kind: 'fusebox', w: 96, h: 96, wall: 20, z: 6, size: { w: 96, h: 96 } },
  { id: 'washer', kind: 'washer', w: 90, h: 112, wall: 26, z: 6, size: { w: 90, h: 112 } },
  {
    id: 'coolant',
    kind: 'tank',
    w: 84,
    h: 112,
    wall: 28,
    z: 4,
    size: { w: 84, h: 112 },
  },
];
const TRIES = 7;
const ROOM_MM = 22;
const BETWEEN_MM = 10;
const EDGES: readonly (readonly [least: number, most: number])[] = [
  [96, 300],
  [1230, 1390],
];

export function sceneryFor(
  draws: Draws,
  ways: readonly (readonly PointMm[])[],
  taken: readonly RectMm[],
): Part[] {
  const parts: Part[] = [];
  const rects: RectMm[] = [...taken];
  for (const thing of THINGS) {
    for (let tries = 0; tries < TRIES; tries++) {
      const at: PointMm = [draws.whole(...draws.pick(EDGES)), draws.whole(196, 600)];
      const rect: RectMm = [at[0], at[1], thing.w, thing.h + thing.wall];
      if (at[0] + thing.w > 1548 || rects.some((other) => overlap(rect, other, BETWEEN_MM))) continue;
      if (ways.some((way) => rectToWay(rect, way) < ROOM_MM)) continue;
      parts.push({
        id: thing.id,
        kind: thing.kind,
        at,
        z: thing.z,
        size: thing.size,
        ...turnedTo(thing, at),
      });
      rects.push(rect);
      break;
    }
  }
  return parts;
}

/** A battery's plus post is on the side of the middle of the bay. */
const turnedTo = ({ kind }: Thing, at: PointMm): Pick<Part, 'drawing'> =>
  kind === 'battery' && at[0] > 800 ? { drawing: 'turned' } : {};
