/** The printed label on the beam. Paper keeps its colours in both themes; what it says comes from the car. */
import type { Part } from '../../../layout/layout';
import { roundRect } from '../paths';
import { bar, type Drawing, fill, mm, shape, text } from '../record';
import { sizeOf } from './partSize';

export function underHoodLabel(part: Part, [heading, line]: readonly [string, string]): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  return [
    shape(roundRect(x, y, w, h, 4), 'paper', 'resv-d', 1.4),
    fill(roundRect(x, y, w * 0.3, h, 4), 'paper-head'),
    text(heading, mm(x + w * 0.15), mm(y + h * 0.68), mm(h * 0.56), 'white'),
    text(line, mm(x + w * 0.65), mm(y + h * 0.46), mm(h * 0.44), 'paper-ink'),
    bar(x + w * 0.36, y + h * 0.66, x + w * 0.93, y + h * 0.66, 'paper-head', 1.6, 0.6),
    bar(x + w * 0.36, y + h * 0.82, x + w * 0.8, y + h * 0.82, 'paper-head', 1.6, 0.6),
  ];
}
