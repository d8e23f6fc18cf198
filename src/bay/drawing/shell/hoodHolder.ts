/** What holds the hood up: a gas strut in each gutter, or one prop rod at picture right. */
import type { Shell } from '../../../layout/layout';
import { across } from '../paints';
import { circle, roundRect } from '../paths';
import { type Drawing, fill, mm, ROUND, shape, stroke } from '../record';
import { bolt, lineShadow } from '../solids';
import { tube } from '../tubes';

export function hoodHolder(shell: Shell): Drawing {
  const { left, right, firewall, hold } = shell;
  const hinge = firewall - 78;
  if (hold === 'rod') return propRod(right + 2, firewall + 318, right - 58, hinge - 30);
  return [
    ...gasStrut(left - 6, firewall + 216, left + 34, hinge - 44),
    ...gasStrut(right + 6, firewall + 216, right - 34, hinge - 44),
  ];
}

/** Share of a gas strut that is its dark tube; the rest is the bright rod. */
const TUBE_SHARE = 0.56;

function gasStrut(ax: number, ay: number, bx: number, by: number): Drawing {
  const mx = mm(ax + (bx - ax) * TUBE_SHARE);
  const my = mm(ay + (by - ay) * TUBE_SHARE);
  return [
    ...lineShadow(`M${ax} ${ay}L${bx} ${by}`, 13, 26),
    ...tube(`M${mx} ${my}L${bx} ${by}`, 9, 'mill'),
    ...tube(`M${ax} ${ay}L${mx} ${my}`, 17, 'iron', 'round'),
    ...bolt(ax, ay, 10, 'iron'),
    ...bolt(bx, by, 9, 'iron'),
  ];
}

const propRod = (ax: number, ay: number, bx: number, by: number): Drawing => [
  ...lineShadow(`M${ax} ${ay}L${bx} ${by}`, 9, 30),
  ...tube(`M${ax} ${ay}L${bx} ${by}`, 9, 'zinc', 'round'),
  { ...shape(roundRect(ax - 11, ay - 26, 20, 40, 6), across('rub'), 'rub-h', 1.4), inkAlpha: 0.5 },
  stroke(`M${bx - 2} ${by + 14}l3 14`, 'rub-d', 13, 1, ROUND),
  shape(circle(bx, by, 11), 'iron-d', 'paint-a', 2.4),
  fill(circle(bx, by + 1, 4.6), 'zinc-a'),
];
