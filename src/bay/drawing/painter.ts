/**
 * The one painter: puts draw records on a 2D canvas. What is painted here becomes a texture of the pixi scene, so both
 * renderers show the same picture and neither has to cut curves into triangles.
 *
 * A gradient spans its shape's box: the canvas is put into that box's own frame while it fills, and the path is put
 * back by the inverse, which keeps slanted and radial gradients true on shapes that are not square.
 */
import type { Matrix } from './matrix';
import type { Gradient } from './paints';
import type { Palette } from './palette';
import { type Box, pathBox } from './pathBox';
import type { Drawing, PathRecord, TextRecord } from './record';

export type Ink2D = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

const FONT = 'system-ui, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif';

/** Paints a drawing; the context's present transform says where a millimetre is. */
export function paint(context: Ink2D, drawing: Drawing, palette: Palette): void {
  for (const record of drawing) {
    context.save();
    if (record.matrix) context.transform(...record.matrix);
    if ('text' in record) paintText(context, record, palette);
    else paintPath(context, record, palette);
    context.restore();
  }
}

function paintText(context: Ink2D, record: TextRecord, palette: Palette): void {
  context.font = `${record.weight} ${record.size}px ${FONT}`;
  context.textAlign = record.anchor === 'middle' ? 'center' : record.anchor;
  context.fillStyle = colour(palette, record.ink);
  context.fillText(record.text, record.x, record.y);
}

function paintPath(context: Ink2D, record: PathRecord, palette: Palette): void {
  const path = new Path2D(record.d);
  if (record.fill !== undefined) {
    context.globalAlpha = record.fillAlpha ?? 1;
    const rule = record.evenOdd ? 'evenodd' : 'nonzero';
    if (typeof record.fill === 'string') {
      context.fillStyle = colour(palette, record.fill);
      context.fill(path, rule);
    } else fillGradient(context, path, pathBox(record.d), record.fill, palette, rule);
  }
  if (record.ink !== undefined) {
    context.globalAlpha = record.inkAlpha ?? 1;
    context.strokeStyle = colour(palette, record.ink);
    context.lineWidth = record.width ?? 1;
    context.lineCap = record.style?.cap ?? 'butt';
    context.lineJoin = record.style?.join ?? 'miter';
    context.setLineDash(record.style?.dash ? [...record.style.dash] : []);
    context.stroke(path);
  }
}

function fillGradient(
  context: Ink2D,
  path: Path2D,
  box: Box,
  gradient: Gradient,
  palette: Palette,
  rule: CanvasFillRule,
): void {
  if (box.w < 0.01 || box.h < 0.01) return;
  const frame: Matrix = [box.w, 0, 0, box.h, box.x, box.y];
  const inverse = new DOMMatrix([1 / box.w, 0, 0, 1 / box.h, -box.x / box.w, -box.y / box.h]);
  const framed = new Path2D();
  framed.addPath(path, inverse);
  context.save();
  context.transform(...frame);
  context.fillStyle = canvasGradient(context, gradient, palette);
  context.fill(framed, rule);
  context.restore();
}

function canvasGradient(context: Ink2D, gradient: Gradient, palette: Palette): CanvasGradient {
  const made =
    gradient.kind === 'linear'
      ? context.createLinearGradient(...gradient.line)
      : context.createRadialGradient(...gradient.centre, 0, ...gradient.centre, gradient.radius);
  for (const { at, ink, alpha } of gradient.stops)
    made.addColorStop(at, withAlpha(colour(palette, ink), alpha ?? 1));
  return made;
}

function colour(palette: Palette, ink: string): string {
  const found = palette[ink];
  if (found === undefined) throw new RangeError(`no colour "${ink}" in the palette`);
  return found;
}

/** #rrggbb with an alpha, as #rrggbbaa. */
function withAlpha(hex: string, alpha: number): string {
  return `${hex}${Math.round(alpha * 255)
    .toString(16)
    .padStart(2, '0')}`;
}
