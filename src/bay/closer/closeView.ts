/** A look-closer picture before it is painted: records, and the frame of them that is shown. */
import type { RectMm } from '../../layout/layout';
import { lit } from '../drawing/paints';
import { roundRect } from '../drawing/paths';
import { type Drawing, fill } from '../drawing/record';

export interface CloseView {
  readonly drawing: Drawing;
  readonly box: RectMm;
}

/** The bench behind a thing that is drawn on its own, past every edge of the box. */
export const backdrop = ([x, y, w, h]: RectMm): Drawing => [
  fill(roundRect(x - w, y - h, 3 * w, 3 * h, 0), lit('floor')),
];
