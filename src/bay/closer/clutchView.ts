/** A clutch from the belt side, and beside it edge-on, where the gap between plate and pulley is seen or is not. */
import type { RectMm } from '../../layout/layout';
import { word } from '../../words/words';
import type { BayFrame } from '../bayFrame';
import { oilPatch } from '../drawing/gear/leakMarks';
import { chain, move, scale } from '../drawing/matrix';
import { down } from '../drawing/paints';
import { clutchFace } from '../drawing/parts/clutchHub';
import { roundRect } from '../drawing/paths';
import { bar, type Drawing, fill, placed, repeat, shape, text } from '../drawing/record';
import { slab } from '../drawing/solids';
import { backdrop, type CloseView } from './closeView';

const BOX: RectMm = [-200, -128, 400, 256];
const FACE_X = 62;
const FACE_SCALE = 0.9;
/** The pulley's outer edge, where the plate comes to. */
const EDGE_X = -146;
const GAP = 15;

/** `oil`: how much lies behind the pulley, where the shaft comes out, 0..1; what runs is thrown on the face. */
export const clutchView = ({ clutchEngaged }: BayFrame, oil: number): CloseView => ({
  drawing: [
    ...backdrop(BOX),
    ...placed(clutchFace(clutchEngaged), chain(move(FACE_X, 0), scale(FACE_SCALE))),
    ...placed(edgeOn(clutchEngaged), move(EDGE_X, 0)),
    ...oilPatch('shaft', EDGE_X + 48, 26, 34, oil),
    ...oilPatch('thrown', FACE_X + 8, 62, 36, oil * 0.6),
    ...(clutchEngaged ? [] : gapMark()),
  ],
  box: BOX,
});

const FACE_BOX: RectMm = [-144, -108, 300, 216];

/** The face alone, with the spans of its belt: what stands edge-on in the bay, turned to the reader. */
export const clutchFaceView = ({ clutchEngaged }: BayFrame, oil: number): CloseView => ({
  drawing: [
    ...backdrop(FACE_BOX),
    ...placed(clutchFace(clutchEngaged), move(-22, 0)),
    ...oilPatch('thrown', -14, 68, 40, oil * 0.6),
  ],
  box: FACE_BOX,
});

/** Plate, pulley and the nose of the compressor, about the pulley's outer edge. */
const edgeOn = (engaged: boolean): Drawing => [
  ...slab(40, -34, 62, 68, { r: 12, lip: 8, m: 'mill', top: down('mill'), elevation: 24 }),
  ...repeat(2, (i) => bar(58 + i * 20, -32, 58 + i * 20, 36, 'mill-c', 3, 0.7)),
  ...slab(0, -62, 7, 124, { r: 3, lip: 4, m: 'mill', top: down('mill'), elevation: 14 }),
  ...slab(35, -62, 7, 124, { r: 3, lip: 4, m: 'mill', top: down('mill'), elevation: 8 }),
  shape(roundRect(6, -60, 30, 124, 2), down('rub'), 'rub-d', 1.8),
  ...repeat(3, (i) => bar(13 + i * 7, -50, 13 + i * 7, -8, 'rub-h', 1.7, 0.95)),
  ...plate(engaged ? 1 : GAP, engaged),
];

function plate(gap: number, engaged: boolean): Drawing {
  const slot: Drawing = engaged
    ? []
    : [
        fill(roundRect(-gap, -50, gap, 102, 2), 'shadow'),
        shape(roundRect(-gap, -10, gap, 22, 2), down('cast'), 'iron-d', 1.2),
      ];
  return [
    ...slot,
    ...slab(-gap - 12, -54, 12, 108, { r: 4, lip: 3, m: 'alu', top: down('alu'), elevation: 10 }),
    ...slab(-gap - 22, -18, 12, 36, { r: 4, lip: 2, m: 'mill', top: down('mill'), elevation: 6 }),
  ];
}

/** Points into the gap. */
const gapMark = (): Drawing => {
  const x = EDGE_X - GAP / 2;
  return [
    bar(x, -92, x, -58, 'alu-h', 2),
    bar(x, -92, x + 12, -92, 'alu-h', 2),
    text(word('bay.closer.gap'), x + 18, -87, 17, 'alu-h', 600, 'start'),
  ];
};
