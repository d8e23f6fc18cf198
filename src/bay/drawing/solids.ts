/**
 * Simple bodies seen from above with a front lip: a body of height h shows h·K below its top face. All are lit from
 * the upper left; a shadow is three flat copies toward the lower right, never a blur.
 */

import { move } from './matrix';
import { across, dome, front, type Gradient, lit } from './paints';
import { circle, ellipse, polygon, roundRect } from './paths';
import { type Drawing, fill, mm, ROUND, repeat, type StrokeStyle, stroke } from './record';

/** How much of a height shows below its top: also the squash of a disc that faces forward. */
export const K = 0.35;

const SHADOW_STEPS: readonly (readonly [reach: number, alpha: number])[] = [
  [0.45, 0.16],
  [0.75, 0.14],
  [1, 0.1],
];
const LINE_SHADOW_STEPS: readonly (readonly [reach: number, alpha: number])[] = [
  [0.5, 0.17],
  [0.8, 0.14],
  [1.1, 0.1],
];

/** Shadow of an outline that stands `elevation` mm over what is below. */
export const shadow = (d: string, elevation: number): Drawing =>
  SHADOW_STEPS.map(([k, alpha]) => ({
    ...fill(d, 'shadow', alpha),
    matrix: move(mm(elevation * 0.62 * k), mm(elevation * 0.5 * k)),
  }));

/** Shadow of something drawn as a stroke. */
export const lineShadow = (d: string, width: number, elevation = 16, style: StrokeStyle = ROUND): Drawing =>
  LINE_SHADOW_STEPS.map(([k, alpha]) => ({
    ...stroke(d, 'shadow', mm(width * (0.86 + k * 0.16)), alpha, style),
    matrix: move(mm(elevation * 0.6 * k), mm(elevation * 0.55 * k)),
  }));

export interface SlabLook {
  readonly r?: number;
  readonly lip?: number;
  readonly m?: string;
  readonly elevation?: number;
  readonly top?: Gradient;
}

/** A box: top face, lip, rim light on its left and top edge, edge in its own dark. */
export function slab(x: number, y: number, w: number, h: number, look: SlabLook = {}): Drawing {
  const { r = 12, lip = 20, m = 'plas', elevation = lip * 1.1 + 8, top = lit(m) } = look;
  const outline = roundRect(x, y, w, h + lip, r);
  const corner = Math.min(r, w / 2, h / 2);
  const inner = Math.max(0, corner - 2);
  const rim = `M${mm(x + 2)} ${mm(y + h - corner)}V${mm(y + corner)}A${inner} ${inner} 0 0 1 ${mm(x + corner)} ${mm(y + 2)}H${mm(x + w - corner)}`;
  return [
    ...shadow(outline, elevation),
    fill(outline, front(m)),
    fill(roundRect(x, y, w, h, r), top),
    stroke(rim, `${m}-h`, 2.4, 0.75, ROUND),
    ...(lip > 4
      ? [stroke(`M${mm(x + corner)} ${mm(y + h)}H${mm(x + w - corner)}`, `${m}-h`, 1.6, 0.35)]
      : []),
    stroke(outline, `${m}-d`, 2),
  ];
}

export interface CanisterLook {
  readonly elevation?: number;
  readonly top?: Gradient;
}

/** An upright cylinder: a domed circle with its wall below. */
export function canister(
  x: number,
  y: number,
  r: number,
  lip: number,
  m: string,
  look: CanisterLook = {},
): Drawing {
  const { elevation = lip * 0.8 + 14, top = dome(m) } = look;
  const wall = `M${mm(x - r)} ${mm(y)}A${r} ${r} 0 0 1 ${mm(x + r)} ${mm(y)}V${mm(y + lip)}A${r} ${r} 0 0 1 ${mm(x - r)} ${mm(y + lip)}Z`;
  const rimR = Math.max(1, r - 3);
  return [
    ...shadow(wall, elevation),
    fill(wall, across(m)),
    stroke(wall, `${m}-d`, 2.2),
    fill(circle(x, y, r - 1), top),
    stroke(
      `M${mm(x - r + 3)} ${mm(y + 4)}A${rimR} ${rimR} 0 0 1 ${mm(x + 4)} ${mm(y - r + 3)}`,
      `${m}-h`,
      2.6,
      0.9,
      ROUND,
    ),
    stroke(`M${mm(x - r)} ${mm(y)}A${r} ${r} 0 0 0 ${mm(x + r)} ${mm(y)}`, `${m}-d`, 1.6, 0.7),
  ];
}

export interface DrumLook {
  readonly grooves?: number;
  readonly face?: string;
  readonly elevation?: number;
}

/** A disc that faces the front: squashed by K, its drum behind it. */
export function drum(
  x: number,
  y: number,
  r: number,
  depth: number,
  m: string,
  look: DrumLook = {},
): Drawing {
  const { grooves = 0, face = m, elevation = 16 } = look;
  const ry = mm(r * K);
  const wall = `M${mm(x - r)} ${mm(y)}V${mm(y - depth)}A${r} ${ry} 0 0 1 ${mm(x + r)} ${mm(y - depth)}V${mm(y)}A${r} ${ry} 0 0 1 ${mm(x - r)} ${mm(y)}Z`;
  const groove = (i: number) => {
    const level = mm(y - (depth * (i + 1)) / (grooves + 1));
    return stroke(`M${mm(x - r)} ${level}A${r} ${ry} 0 0 1 ${mm(x + r)} ${level}`, `${m}-d`, 2, 0.75);
  };
  return [
    ...shadow(wall, elevation),
    fill(wall, across(m)),
    ...repeat(grooves, groove),
    stroke(wall, `${m}-d`, 2),
    fill(ellipse(x, y, r - 1, ry - 0.5), lit(face)),
    stroke(ellipse(x, y, r - 1, ry - 0.5), `${face}-d`, 1.6, 0.8),
    stroke(
      `M${mm(x - r + 2)} ${mm(y)}A${mm(r - 2)} ${mm(ry - 1)} 0 0 1 ${mm(x)} ${mm(y - ry + 1.2)}`,
      `${face}-h`,
      2,
      0.8,
      ROUND,
    ),
  ];
}

export function bolt(x: number, y: number, r = 6, m = 'mill'): Drawing {
  const corners = [0, 1, 2, 3, 4, 5].map(
    (i) => [x + Math.cos((i * Math.PI) / 3) * r * 0.58, y + Math.sin((i * Math.PI) / 3) * r * 0.58] as const,
  );
  return [
    fill(circle(x + 1.5, y + 1.5, r + 1.5), 'shadow', 0.35),
    fill(circle(x, y, r), dome(m)),
    stroke(circle(x, y, r), `${m}-d`, 1.2),
    stroke(polygon(corners), `${m}-d`, 1.1, 0.7),
  ];
}
