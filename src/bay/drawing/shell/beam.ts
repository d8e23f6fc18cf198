/** Radiator support: the painted beam across the nose, over the lines, with the hood latch in its middle. */
import type { Shell } from '../../../layout/layout';
import { PANEL } from '../paints';
import { roundRect } from '../paths';
import { type Drawing, fill, mm, ROUND, repeat, stroke } from '../record';
import { bolt, slab } from '../solids';

export const BEAM_HEIGHT = 46;

export function beam({ left, right, beam: y }: Shell): Drawing {
  const middle = (left + right) / 2;
  return [
    ...slab(left + 6, y, right - left - 12, BEAM_HEIGHT, {
      r: 8,
      lip: 14,
      m: 'paint',
      elevation: 30,
      top: PANEL,
    }),
    ...repeat(9, (i) => {
      const x = left + 60 + (i * (right - left - 120)) / 8;
      if (i === 4) return [];
      if (i % 2) return bolt(x, y + BEAM_HEIGHT / 2, 8);
      return [
        fill(roundRect(x - 34, y + 12, 68, BEAM_HEIGHT - 24, 11), 'paint-d', 0.75),
        stroke(`M${mm(x - 24)} ${y + BEAM_HEIGHT - 11}h48`, 'paint-a', 2, 0.7),
      ];
    }),
    ...slab(middle - 46, y - 6, 92, BEAM_HEIGHT + 8, { r: 10, lip: 10, m: 'iron', elevation: 18 }),
    fill(roundRect(middle - 9, y + 4, 18, 34, 9), 'iron-d'),
    stroke(`M${middle - 26} ${y + 20}q26 -22 52 0`, 'mill-b', 5, 1, ROUND),
    ...bolt(middle - 32, y + 34, 6),
    ...bolt(middle + 32, y + 34, 6),
  ];
}
