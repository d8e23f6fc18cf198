/** Printed plate with a triangle and a flash: what lies under it carries a voltage that kills. */
import { polygon, roundRect } from '../paths';
import { type Drawing, fill, ROUND_JOIN, shape } from '../record';

export function warningPlate(x: number, y: number, h = 40): Drawing {
  const k = h / 40;
  const at = (dx: number, dy: number): readonly [number, number] => [x + dx * k, y + dy * k];
  return [
    shape(roundRect(x - 30 * k, y - 20 * k, 60 * k, 40 * k, 5), 'paper', 'paper-head', 1.6),
    shape(polygon([at(0, -14), at(17, 14), at(-17, 14)]), 'paper', 'paper-ink', 3 * k, ROUND_JOIN),
    fill(polygon([at(2, -7), at(-6, 4), at(-1, 4), at(-3, 11), at(6, 0), at(1, 0)]), 'paper-ink'),
  ];
}
