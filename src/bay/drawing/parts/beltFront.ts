/**
 * Belt drive facing the front. Pulleys stand in the x-z plane and are squashed by K; the belt is the outer tangents
 * between them and the arcs round them, drawn as its outer surface with a front edge.
 */
import type { Part, PointMm } from '../../../layout/layout';
import { move } from '../matrix';
import { dome, front, lit } from '../paints';
import { ellipse, polygon } from '../paths';
import { type Drawing, type DrawRecord, fill, mm, ROUND, ROUND_JOIN, shape, stroke } from '../record';
import { drum, K } from '../solids';

interface Pulley {
  readonly x: number;
  /** Height over the crank. */
  readonly z: number;
  readonly r: number;
}

const BELT_THICK = 4;
const BELT_DEPTH = 26;
const ARC_STEPS = 32;

export function beltFront(part: Part): Drawing {
  const [x, y] = part.at;
  const pulleys = (part.wheels ?? []).map(([dx, z, r]): Pulley => ({ x: x + dx, z, r }));
  const loop = beltLoop(pulleys);
  const seen = (p: PointMm): PointMm => [p[0], y - p[1] * K];
  const edge = polygon(loop.map(seen));
  const { outer, ribs, under } = surfaces(loop.map(seen));
  return [
    { ...fill(edge, 'shadow', 0.22), matrix: move(12, 10) },
    ...under,
    ...pulleys.flatMap((p) => drum(p.x, y - p.z * K, p.r, BELT_DEPTH, 'iron', { grooves: 3, elevation: 10 })),
    ...outer,
    ...ribs,
    ...pulleys.flatMap((p) => face(p.x, y - p.z * K, p.r)),
    stroke(edge, 'rub-d', 6.4, 1, ROUND_JOIN),
    stroke(edge, 'rub-a', 3.2, 1, ROUND_JOIN),
  ];
}

/** Points of the belt's front edge in (x, height), once round, for drawing and for the ticks of a running belt. */
export function beltEdge(part: Part): readonly PointMm[] {
  const [x, y] = part.at;
  const pulleys = (part.wheels ?? []).map(([dx, z, r]): Pulley => ({ x: x + dx, z, r }));
  return beltLoop(pulleys).map((p) => [p[0], y - p[1] * K]);
}

function beltLoop(pulleys: readonly Pulley[]): PointMm[] {
  const next = (i: number): Pulley => pulleys[(i + 1) % pulleys.length];
  const normals = pulleys.map((a, i) => {
    const b = next(i);
    const dx = b.x - a.x;
    const dz = b.z - a.z;
    return Math.atan2(dz, dx) + Math.PI / 2 - Math.asin((a.r - b.r) / Math.hypot(dx, dz));
  });
  const on = (p: Pulley, angle: number): PointMm => [
    p.x + Math.cos(angle) * (p.r + BELT_THICK),
    p.z + Math.sin(angle) * (p.r + BELT_THICK),
  ];
  return pulleys.flatMap((a, i) => {
    const b = next(i);
    let to = normals[(i + 1) % normals.length];
    while (to > normals[i]) to -= 2 * Math.PI;
    const round = Array.from({ length: ARC_STEPS - 1 }, (_, k) =>
      on(b, normals[i] + ((to - normals[i]) * (k + 1)) / ARC_STEPS),
    );
    return [on(a, normals[i]), on(b, normals[i]), ...round];
  });
}

function surfaces(edge: readonly PointMm[]): {
  readonly outer: DrawRecord[];
  readonly ribs: DrawRecord[];
  readonly under: DrawRecord[];
} {
  const outer: DrawRecord[] = [];
  const under: DrawRecord[] = [];
  const ribs = new Map<number, string>();
  edge.forEach((a, i) => {
    const b = edge[(i + 1) % edge.length];
    const quad = polygon([a, b, [b[0], b[1] - BELT_DEPTH], [a[0], a[1] - BELT_DEPTH]]);
    if (b[0] <= a[0]) {
      under.push(shape(quad, 'rub-d', 'rub-d', 1));
      return;
    }
    outer.push(shape(quad, 'rub-b', 'rub-b', 1));
    for (const k of [5, 10, 15, 20])
      ribs.set(k, `${ribs.get(k) ?? ''}M${mm(a[0])} ${mm(a[1] - k)}L${mm(b[0])} ${mm(b[1] - k)}`);
  });
  return { outer, under, ribs: [...ribs.values()].map((d) => stroke(d, 'rub-h', 1.3, 0.42)) };
}

const face = (x: number, y: number, r: number): Drawing => [
  shape(ellipse(x, y, r, r * K), lit('iron'), 'iron-d', 1.6),
  stroke(
    `M${mm(x - r + 2)} ${mm(y)}A${r - 2} ${mm((r - 2) * K)} 0 0 1 ${mm(x + r * 0.5)} ${mm(y - r * K * 0.83)}`,
    'iron-h',
    1.8,
    0.8,
    ROUND,
  ),
  shape(ellipse(x, y + 1, r * 0.7, r * 0.7 * K), front('iron'), 'iron-d', 1.4),
  shape(ellipse(x, y - 1, r * 0.27, r * 0.27 * K), dome('mill'), 'mill-d', 1.4),
];
