/**
 * Electric fan behind the radiator, seen from above: a shroud with a mouth, seven broad swept blades, the motor on three
 * arms. Shroud, blades and motor are drawn apart, so that the blades can turn between the other two.
 */
import type { Part, PointMm } from '../../../layout/layout';
import { move } from '../matrix';
import { across, dome, lit } from '../paints';
import { arc, ellipse, polygon } from '../paths';
import { bar, type Drawing, fill, mm, ROUND, repeat, shape, stroke } from '../record';
import { drum, K, slab } from '../solids';
import { sizeOf } from './partSize';

/** Squash of the mouth. */
export const MOUTH_K = 0.34;
const BLADES = 7;
const BLADE_SHARE = 0.66;

/** What has blades that turn: with a motor, or on the engine's belt. */
export const isFan = (part: Part): boolean => part.kind === 'fan-electric' || part.kind === 'fan-belt';

export interface FanPlace {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** Centre and radius of the mouth. */
export function fanPlace(part: Part): FanPlace {
  if (part.kind === 'fan-belt') return { x: part.at[0], y: part.at[1], r: sizeOf(part, 'mouthR') };
  return { x: part.at[0], y: part.at[1] + sizeOf(part, 'h', 96) * 0.48, r: sizeOf(part, 'mouthR') };
}

export function fanShroud(part: Part): Drawing {
  const { x, y, r } = fanPlace(part);
  const w = sizeOf(part, 'w');
  return [
    ...slab(x - w / 2, part.at[1], w, sizeOf(part, 'h', 96), { r: 16, lip: 10, m: 'plas', elevation: 30 }),
    shape(ellipse(x, y - 2, r + 7, (r + 7) * MOUTH_K + 3), lit('plas'), 'plas-d', 1.8),
    stroke(
      `M${mm(x - r - 4)} ${mm(y - 3)}A${r + 4} ${mm((r + 4) * MOUTH_K)} 0 0 1 ${mm(x + r * 0.6)} ${mm(y - 3 - r * MOUTH_K * 0.82)}`,
      'plas-h',
      2.8,
      0.9,
      ROUND,
    ),
    shape(ellipse(x, y, r, r * MOUTH_K), 'floor-d', 'plas-d', 3),
  ];
}

export function fanMotor(part: Part): Drawing {
  const { x, y, r } = fanPlace(part);
  const arm = (angle: number): Drawing => {
    const at = (aside: number, share: number): PointMm => [
      x + Math.cos(angle + aside) * r * share,
      y + 4 + Math.sin(angle + aside) * r * MOUTH_K * share,
    ];
    return [
      shape(
        polygon([at(-0.5, 0.17), at(-0.055, 1), at(0.055, 1), at(0.5, 0.17)]),
        across('plas'),
        'plas-d',
        1.6,
      ),
    ];
  };
  return [
    ...[0.52, 1.57, 2.62].flatMap(arm),
    ...drum(x, y + 6, r * 0.17, 9, 'iron', { elevation: 10 }),
    fill(ellipse(x, y + 6, r * 0.06, r * 0.06 * K), 'iron-d'),
  ];
}

/** Blades standing still: lit leading edges, shaded trailing thirds, thickness and a shadow below each. */
export function fanStill(part: Part): Drawing {
  const { x, y, r: mouth } = fanPlace(part);
  const r = mouth * 0.96;
  const phase = sizeOf(part, 'phase', 0.2);
  const turns = Array.from({ length: BLADES }, (_, i) => phase + (i * 2 * Math.PI) / BLADES).sort(
    (a, b) => Math.sin(a) - Math.sin(b),
  );
  return [...turns.flatMap((angle) => blade(x, y, r, angle)), ...hub(part, x, y, r)];
}

function blade(x: number, y: number, r: number, angle: number): Drawing {
  const wide = ((2 * Math.PI) / BLADES) * BLADE_SHARE;
  const at = (share: number, aside: number, dy: number): string =>
    `${mm(x + Math.cos(angle + aside) * share * r)} ${mm(y + Math.sin(angle + aside) * share * r * MOUTH_K + dy)}`;
  const outline = (dy: number): string => paddle((share, aside) => at(share, aside, dy), wide);
  const p = (share: number, aside: number): string => at(share, aside, 0);
  const trailing = `M${p(0.24, wide * 0.1)}Q${p(0.62, -wide * 0.08)} ${p(0.97, wide * 0.18)}L${p(0.93, wide * 0.56)}Q${p(0.6, wide * 0.18)} ${p(0.2, wide * 0.42)}Z`;
  return [
    { ...fill(outline(9), 'shadow', 0.4), matrix: move(6, 0) },
    fill(outline(5), 'fanb-d'),
    shape(outline(0), lit('fanb'), 'fanb-d', 1.8, { join: 'round' }),
    fill(trailing, 'fanb-c', 0.62),
    stroke(
      `M${p(0.22, -wide * 0.33)}Q${p(0.62, -wide * 0.58)} ${p(0.92, -wide * 0.31)}`,
      'fanb-h',
      3,
      1,
      ROUND,
    ),
  ];
}

/** One paddle's outline through a polar point function. */
function paddle(p: (share: number, aside: number) => string, wide: number): string {
  return (
    `M${p(0.2, -wide * 0.36)}Q${p(0.62, -wide * 0.62)} ${p(0.93, -wide * 0.34)}Q${p(0.985, -wide * 0.2)} ${p(0.985, 0)}` +
    `Q${p(0.985, wide * 0.34)} ${p(0.93, wide * 0.56)}Q${p(0.6, wide * 0.18)} ${p(0.2, wide * 0.42)}Z`
  );
}

/** A motor's hub is plain; on an engine's belt sits a ribbed coupling that slips. */
const hub = (part: Part, x: number, y: number, r: number): Drawing =>
  part.kind === 'fan-belt' ? coupling(x, y, r * 0.24) : motorHub(x, y, r);

const motorHub = (x: number, y: number, r: number): Drawing => [
  ...drum(x, y + 6, r * 0.2, 12, 'fanb', { elevation: 14 }),
  fill(ellipse(x, y + 6, r * 0.084, r * 0.084 * K), 'mill-b'),
];

const coupling = (x: number, y: number, r: number): Drawing => [
  ...drum(x, y + 6, r, 22, 'cast', { elevation: 14 }),
  ...repeat(10, (i) => {
    const [c, s] = [Math.cos(i * 0.628), Math.sin(i * 0.628) * K];
    return bar(
      x + c * r * 0.6,
      y + 6 + s * r * 0.6,
      x + c * r * 0.94,
      y + 6 + s * r * 0.94,
      'cast-d',
      2.2,
      0.6,
    );
  }),
  shape(ellipse(x, y + 6, r * 0.42, r * 0.42 * K), dome('mill'), 'mill-d', 1.6),
];

/**
 * Blades in motion, round about the origin: ghosts of the paddles and arcs. The scene turns this picture and squashes
 * it by MOUTH_K, so a turning fan costs one textured square.
 */
export function fanTurning(mouth: number): Drawing {
  const r = mouth * 0.96;
  const wide = ((2 * Math.PI) / BLADES) * BLADE_SHARE;
  const ghosts = Array.from({ length: BLADES }, (_, i) => {
    const angle = (i * 2 * Math.PI) / BLADES;
    const at = (share: number, aside: number): string =>
      `${mm(Math.cos(angle + aside) * share * r)} ${mm(Math.sin(angle + aside) * share * r)}`;
    return fill(paddle(at, wide), 'fanb-a', 0.2);
  });
  const arcs = [0.92, 0.78, 0.62, 0.46].flatMap((share, i) =>
    [
      [0.2, 1.5],
      [2.2, 3.4],
      [3.9, 5.6],
    ].map(([from, to]) =>
      stroke(arc(0, 0, r * share, r * share, from + i * 0.5, to + i * 0.5), 'fanb-h', i ? 4 : 6, 0.5, ROUND),
    ),
  );
  return [fill(ellipse(0, 0, r * 0.97, r * 0.97), 'fanb-b', 0.35), ...ghosts, ...arcs];
}

/** Hub over the turning blades. */
export function fanHub(part: Part): Drawing {
  const { x, y, r } = fanPlace(part);
  return hub(part, x, y, r * 0.96);
}
