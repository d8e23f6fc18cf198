/** Blunt nose of a van: a panel in body colour, tall corner lamps, a narrow slot, a dark bumper, the ground in front. */
import type { Shell } from '../../../layout/layout';
import { dome, down, front, lit, PANEL } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape, stroke } from '../record';
import { slab } from '../solids';
import { PAST } from './body';

const SLOT_MM = 30;

export function noseFlat(shell: Shell): Drawing {
  const { left, right, grille, bumper } = shell;
  const end = left + right + PAST;
  const w = right - left;
  const edge = (dy: number): string =>
    `M${-PAST} ${grille + 4 + dy}Q${left - 40} ${grille - 2 + dy} ${left + 40} ${grille + 2 + dy}H${right - 40}Q${right + 40} ${grille - 2 + dy} ${end} ${grille + 4 + dy}`;
  const ground = `M${-PAST} ${bumper - 16}Q${(left + right) / 2} ${bumper + 14} ${end} ${bumper - 16}V${bumper + PAST}H${-PAST}Z`;
  return [
    fill(`${edge(0)}V${bumper + PAST}H${-PAST}Z`, PANEL),
    stroke(edge(2), 'paint-h', 3.4, 0.85),
    ...slab(left + 190, grille + 10, w - 380, 18, { r: 8, lip: 4, m: 'plas', elevation: 8 }),
    ...repeat((w - 420) / SLOT_MM, (i) =>
      fill(roundRect(left + 208 + i * SLOT_MM, grille + 14, 16, 9, 3), 'plas-d'),
    ),
    ...lamp(left - 70, grille, 1),
    ...lamp(right - 70, grille, -1),
    fill(`M${-PAST} ${grille + 34}H${end}V${bumper + PAST}H${-PAST}Z`, front('plas')),
    bar(-PAST, grille + 35, end, grille + 35, 'plas-h', 2.4, 0.8),
    fill(ground, lit('floor')),
    fill(ground, 'shadow', 0.62),
  ];
}

function lamp(x: number, y: number, s: 1 | -1): Drawing {
  const at = (dx: number): number => x + 70 + s * dx;
  return [
    ...slab(x, y - 22, 140, 44, { r: 18, lip: 8, m: 'plas', elevation: 14 }),
    shape(roundRect(x + 8, y - 16, 124, 32, 13), down('mill'), 'mill-d', 2),
    fill(circle(at(26), y, 12), dome('cast')),
    fill(circle(at(-24), y, 9), dome('cast')),
    bar(x + 20, y - 9, x + 96, y - 9, 'mill-h', 3, 0.8),
  ];
}
