/**
 * A compressor clutch face-on, as seen from the belt side in the look-closer view: pulley, and the hub plate before it.
 * Open, the plate stands still with three sharp arms and a black gap round it; engaged it turns with the pulley, arms
 * smeared, arrows outside.
 */
import { move, turn } from '../matrix';
import { across, dome, lit } from '../paints';
import { arc, circle, polygon, roundRect } from '../paths';
import { type Drawing, fill, mm, placed, ROUND, repeat, shape, stroke } from '../record';
import { bolt } from '../solids';

const SMEARS = [
  [0.5, 0.13, 0.32],
  [0.5, 0.03, 0.5],
  [0.34, 0.025, 0.45],
  [0.24, 0.02, 0.4],
] as const;

/** About the origin, radius `r`. */
export function clutchFace(r: number, engaged: boolean): Drawing {
  const gap: Drawing = engaged
    ? []
    : [fill(circle(0, 0, r * 0.71), 'shadow'), fill(circle(4, 5, r * 0.66), 'shadow', 0.5)];
  const hub: Drawing = [
    shape(circle(0, 0, r * 0.66), dome('mill'), 'mill-d', 2.4),
    stroke(circle(0, 0, r * 0.6), 'mill-d', 1.4, 0.5),
    ...(engaged ? smear(r) : arms(r)),
    shape(circle(0, 0, r * 0.2), dome('cast'), 'mill-d', 2),
  ];
  return [
    ...belt(r),
    fill(circle(9, 11, r), 'shadow', 0.3),
    shape(circle(0, 0, r), dome('iron'), 'iron-d', 2.4),
    ...[0.95, 0.9].map((k) => stroke(circle(0, 0, r * k), 'iron-d', 2, 0.8)),
    shape(circle(0, 0, r * 0.86), lit('iron'), 'iron-d', 2),
    ...repeat(18, (i) => placed([fill(roundRect(-5, -r * 0.79, 10, r * 0.1, 5), 'iron-d')], turn(i * 20))),
    ...gap,
    ...placed(hub, turn(engaged ? 0 : 18)),
    ...bolt(0, 0, r * 0.11, 'iron'),
    ...(engaged ? arrows(r) : []),
  ];
}

/** Two spans leave the wheel for the smaller pulleys out of the picture. */
function belt(r: number): Drawing {
  const lean = 0.2;
  const d = [1, -1]
    .map((side) => {
      const [x, y] = [r * 0.93 * Math.sin(lean), -side * r * 0.93 * Math.cos(lean)];
      const far = r * 2.4;
      return `M${mm(x)} ${mm(y)}L${mm(x + far * Math.cos(lean))} ${mm(y + side * far * Math.sin(lean))}`;
    })
    .join('');
  return [
    { ...stroke(d, 'shadow', 24, 0.3), matrix: move(8, 9) },
    stroke(d, 'rub-d', 25),
    stroke(d, 'rub-a', 18),
    stroke(d, 'rub-h', 1.6, 0.7),
  ];
}

const smear = (r: number): Drawing =>
  SMEARS.flatMap(([share, width, alpha]) =>
    repeat(3, (i) =>
      stroke(
        arc(0, 0, r * share, r * share, i * 2.094 + 0.25, i * 2.094 + 1.8),
        'mill-d',
        r * width,
        alpha,
        ROUND,
      ),
    ),
  );

const arms = (r: number): Drawing =>
  repeat(3, (i) => {
    const arm = polygon([
      [-r * 0.12, -r * 0.18],
      [-r * 0.085, -r * 0.5],
      [r * 0.085, -r * 0.5],
      [r * 0.12, -r * 0.18],
    ]);
    const drawing: Drawing = [
      shape(arm, across('cast'), 'mill-d', 1.8, { join: 'round' }),
      ...bolt(0, -r * 0.49, r * 0.062),
      ...bolt(0, -r * 0.24, r * 0.05),
    ];
    return placed(drawing, turn(i * 120));
  });

/** Arrows round a turning pulley. */
const arrows = (r: number): Drawing =>
  [-0.5, 1.6, 3.7].flatMap((from) => {
    const [q, to] = [r * 1.1, from + 0.62];
    const [x, y] = [Math.cos(to) * q, Math.sin(to) * q];
    const head = polygon([
      [x - Math.sin(to) * 9, y + Math.cos(to) * 9],
      [x + Math.cos(to) * 7, y + Math.sin(to) * 7],
      [x - Math.cos(to) * 7, y - Math.sin(to) * 7],
    ]);
    return [stroke(arc(0, 0, q, q, from, to), 'alu-a', 3.4, 1, ROUND), fill(head, 'alu-a')];
  });
