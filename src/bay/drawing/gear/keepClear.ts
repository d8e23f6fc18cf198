/**
 * Keep clear: a hatched zone with a dashed outline over white and a triangle with an exclamation mark. Never colour
 * alone; the words are said by the twin's label on top. Shown while a hose is carried, or on asking.
 */
import type { RectMm } from '../../../layout/layout';
import { polygon, roundRect } from '../paths';
import { type Drawing, fill, mm, ROUND_JOIN, shape, stroke, text } from '../record';

const HATCH_MM = 34;

export function keepClear([x, y, w, h]: RectMm): Drawing {
  let hatch = '';
  for (let offset = HATCH_MM; offset < w + h; offset += HATCH_MM) {
    const ax = x + Math.min(offset, w);
    const ay = y + Math.max(0, offset - w);
    const bx = x + Math.max(0, offset - h);
    const by = y + Math.min(offset, h);
    hatch += `M${mm(ax)} ${mm(ay)}L${mm(bx)} ${mm(by)}`;
  }
  const outline = roundRect(x, y, w, h, 14);
  return [
    fill(outline, 'danger', 0.1),
    stroke(hatch, 'danger', 3.4, 0.6),
    stroke(outline, 'card', 8, 0.9),
    stroke(outline, 'danger', 5, 1, { dash: [22, 10] }),
    ...warningSign(x + w / 2, y + h / 2, Math.min(22, h * 0.3, w * 0.3)),
  ];
}

export const warningSign = (x: number, y: number, r: number): Drawing => [
  shape(
    polygon([
      [x, y - r],
      [x + r * 1.08, y + r * 0.84],
      [x - r * 1.08, y + r * 0.84],
    ]),
    'danger',
    'white',
    3,
    ROUND_JOIN,
  ),
  text('!', x, mm(y + r * 0.64), mm(r * 1.25), 'white', 800),
];
