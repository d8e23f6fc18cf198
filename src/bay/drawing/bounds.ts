/** The box a drawing fills, strokes included. Round about for turned shapes: their box's corners are turned. */
import { type Box, pathBox } from './pathBox';
import type { Drawing, DrawRecord } from './record';

export function boundsOf(drawing: Drawing): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const record of drawing) {
    const box = recordBox(record);
    for (const [x, y] of corners(box)) {
      const [px, py] = record.matrix
        ? [
            record.matrix[0] * x + record.matrix[2] * y + record.matrix[4],
            record.matrix[1] * x + record.matrix[3] * y + record.matrix[5],
          ]
        : [x, y];
      left = Math.min(left, px);
      right = Math.max(right, px);
      top = Math.min(top, py);
      bottom = Math.max(bottom, py);
    }
  }
  return right < left ? { x: 0, y: 0, w: 0, h: 0 } : { x: left, y: top, w: right - left, h: bottom - top };
}

/** Widest a glyph of the interface's fonts gets, over its size. */
const GLYPH = 0.72;

function recordBox(record: DrawRecord): Box {
  if ('text' in record) {
    const w = record.text.length * record.size * GLYPH;
    const x =
      record.anchor === 'middle' ? record.x - w / 2 : record.anchor === 'end' ? record.x - w : record.x;
    return { x, y: record.y - record.size, w, h: record.size * 1.3 };
  }
  const box = pathBox(record.d);
  const half = record.ink === undefined ? 0 : (record.width ?? 1) / 2;
  return { x: box.x - half, y: box.y - half, w: box.w + 2 * half, h: box.h + 2 * half };
}

const corners = ({ x, y, w, h }: Box): readonly (readonly [number, number])[] => [
  [x, y],
  [x + w, y],
  [x, y + h],
  [x + w, y + h],
];
