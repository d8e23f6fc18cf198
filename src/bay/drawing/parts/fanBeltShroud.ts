/** Shroud of a fan on the engine's belt: a wall across the radiator with a round mouth, in which the fan stands whole. */
import type { Part } from '../../../layout/layout';
import { down, lit } from '../paints';
import { bar, type Drawing, fill, mm, ROUND, ROUND_JOIN, repeat, shape, stroke } from '../record';
import { shadow } from '../solids';
import { fanPlace, MOUTH_K } from './fanElectric';
import { sizeOf } from './partSize';

const RIM_MM = 22;

export function fanBeltShroud(part: Part): Drawing {
  const { x, y, r: mouthR } = fanPlace(part);
  const half = sizeOf(part, 'w') / 2;
  const r = mouthR + RIM_MM;
  const ry = mm(r * MOUTH_K);
  const [left, right, top, bottom] = [x - half, x + half, y + 12, y + sizeOf(part, 'd')];
  const wall =
    `M${left} ${bottom}V${top + 14}Q${left} ${top} ${left + 14} ${top}H${x - r}V${y}A${r} ${ry} 0 0 1 ${x + r} ${y}` +
    `V${top}H${right - 14}Q${right} ${top} ${right} ${top + 14}V${bottom}Z`;
  return [
    ...shadow(wall, 20),
    shape(wall, down('plas'), 'plas-d', 2.2, ROUND_JOIN),
    ...repeat(5, (i) => [...rib(left + 26 + i * 30, top, bottom), ...rib(right - 26 - i * 30, top, bottom)]),
    stroke(
      `M${left + 6} ${top + 3}H${x - r - 6}M${x + r + 6} ${top + 3}H${right - 14}`,
      'plas-h',
      2.4,
      0.7,
      ROUND,
    ),
    ...lip(x, y, r),
  ];
}

const rib = (x: number, top: number, bottom: number): Drawing => [
  bar(x, top + 10, x, bottom, 'plas-d', 2.4, 0.7),
  bar(x + 3, top + 12, x + 3, bottom, 'plas-h', 1.2, 0.4),
];

/** Rolled edge of the mouth. */
function lip(x: number, y: number, r: number): Drawing {
  const ring = (share: number, dy: number): string => {
    const [rx, ry] = [mm(r * share), mm(r * share * MOUTH_K)];
    return `M${mm(x - rx)} ${y + dy}A${rx} ${ry} 0 1 1 ${mm(x + rx)} ${y + dy}A${rx} ${ry} 0 1 1 ${mm(x - rx)} ${y + dy}Z`;
  };
  return [
    fill(ring(1, 0), 'plas-c'),
    shape(ring(0.985, -3), lit('plas'), 'plas-d', 1.6),
    shape(ring(0.925, 0), 'floor-d', 'plas-d', 3),
    stroke(
      `M${mm(x - r * 0.97)} ${y - 4}A${mm(r * 0.97)} ${mm(r * 0.97 * MOUTH_K)} 0 0 1 ${mm(x + r * 0.62)} ${mm(y - 4 - r * MOUTH_K * 0.76)}`,
      'plas-h',
      3,
      0.9,
      ROUND,
    ),
  ];
}
