/** The can in the hand from near: its print, tap and tilt, and how far up its wall is cold. */
import type { RectMm } from '../../layout/layout';
import { word } from '../../words/words';
import type { CanFrame } from '../bayFrame';
import { CAN_SIZE, canDrawing, tiltDial } from '../drawing/gear/can';
import { chain, move, scale } from '../drawing/matrix';
import { polygon } from '../drawing/paths';
import { bar, type Drawing, fill, placed, text } from '../drawing/record';
import { backdrop, type CloseView } from './closeView';

const BOX: RectMm = [-200, -128, 400, 256];
const SIZE = 1.42;
const DIAL: readonly [number, number] = [140, -66];

export function canView(can: CanFrame): CloseView {
  const share = (1 - Math.cos((can.tiltDeg * Math.PI) / 180)) / 2;
  const at = [-56, 40 - 78 * share] as const;
  return {
    drawing: [
      ...backdrop(BOX),
      ...placed(
        canDrawing(can.print, can.tiltDeg, can.valveSixteenths, can.frostLevel),
        chain(move(...at), scale(SIZE)),
      ),
      ...placed(tiltDial(can.tiltDeg), move(...DIAL)),
      ...(can.frostLevel !== null && can.tiltDeg <= UPRIGHT_DEG ? mark(at, can.frostLevel) : []),
    ],
    box: BOX,
  };
}

/** Leaning farther, the line is no height. */
const UPRIGHT_DEG = 20;

/** An arrow to where the cold wall ends. */
function mark([x, y]: readonly [number, number], level: number): Drawing {
  const right = x + (CAN_SIZE.w / 2) * SIZE + 14;
  const top = y + CAN_SIZE.h * SIZE * (0.5 - level);
  return [
    bar(right, top, right + 40, top, 'alu-a', 2.4),
    fill(
      polygon([
        [right - 6, top],
        [right + 4, top - 5],
        [right + 4, top + 5],
      ]),
      'alu-a',
    ),
    text(word('bay.closer.frostLine'), right + 48, top + 5, 15, 'alu-h', 600, 'start'),
  ];
}
