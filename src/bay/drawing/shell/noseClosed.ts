/** Closed nose of an electric car: no slot, one thin lamp from side to side, a flap over the charging inlet. */
import type { Shell } from '../../../layout/layout';
import { down } from '../paints';
import { roundRect } from '../paths';
import { type Drawing, mm, ROUND, ROUND_JOIN, repeat, shape, stroke } from '../record';
import { ground, roundedPanel } from './nose';

export function noseClosed(shell: Shell): Drawing {
  const { left, right, grille, bumper } = shell;
  const middle = (left + right) / 2;
  const strip = (dy: number): string =>
    `M${left - 120} ${grille + 30 + dy}Q${left - 20} ${grille + 2 + dy} ${left + 120} ${grille + 16 + dy}Q${middle} ${grille + 2 + dy} ` +
    `${right - 120} ${grille + 16 + dy}Q${right + 20} ${grille + 2 + dy} ${right + 120} ${grille + 30 + dy}`;
  const flap = roundRect(right - 330, grille + 26, 96, 24, 9);
  return [
    ...roundedPanel(shell),
    stroke(strip(0), 'paint-d', 20, 1, ROUND),
    stroke(strip(0), 'plas-c', 15, 1, ROUND),
    stroke(strip(-2), 'mill-a', 5, 0.9, ROUND),
    ...repeat(2, (i) =>
      shape(
        roundRect(i ? right - 86 : left - 64, grille + 2, 150, 20, 9),
        down('mill'),
        'plas-d',
        3,
        ROUND_JOIN,
      ),
    ),
    shape(flap, 'paint-b', 'paint-d', 2),
    stroke(`M${mm(right - 322)} ${grille + 29}h78`, 'paint-h', 2, 0.8, ROUND),
    ...ground(left, right, bumper),
  ];
}
