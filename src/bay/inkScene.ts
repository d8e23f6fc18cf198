/**
 * Inks pixi's scene, node by node in drawing order. Everything here is a stamp or a handful of strokes, so what a renderer
 * adds (batches, masks, filters, shaders) would be fetched and never used. A node counts with its transform, visibility and
 * alpha; a sprite with its texture; graphics with fills and strokes of the shapes named below; a way's strokes ink
 * themselves.
 */
import { type Container, Graphics, type GraphicsPath, Sprite, type StrokeInstruction } from 'pixi.js';
import type { Inks } from './ink/inks';
import { pictureOf } from './pictureTexture';
import { WayStrokes } from './wayStrokes';

type PathStep = GraphicsPath['instructions'][number];
/** From a node's own millimetres to device pixels. */
interface Matrix {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly tx: number;
  readonly ty: number;
}

/** A shape as pixi notes it: its numbers in order, then a matrix that stays as it is here. */
const SHAPES: Readonly<Record<string, (ink: Inks, data: readonly number[]) => void>> = {
  moveTo: (ink, [x, y]) => ink.moveTo(x, y),
  lineTo: (ink, [x, y]) => ink.lineTo(x, y),
  roundRect: (ink, [x, y, w, h, radius]) => ink.roundRect(x, y, w, h, radius),
  circle: (ink, [x, y, radius]) => ink.circle(x, y, radius),
};

/** A scale nearer to one than this is one. */
const SAME = 1e-6;

/** `resolution`: device pixels a pixel. Throws `RangeError` for a shape, or a way of drawing, that was not used so far. */
export function inkScene(ink: Inks, stage: Container, resolution: number): void {
  inkNode(ink, stage, { a: resolution, b: 0, c: 0, d: resolution, tx: 0, ty: 0 }, 1);
}

function inkNode(ink: Inks, node: Container, outer: Matrix, outerAlpha: number): void {
  if (!node.visible || !node.renderable || node.alpha <= 0) return;
  node.updateLocalTransform();
  const m = within(outer, node.localTransform);
  const alpha = outerAlpha * node.alpha;
  ink.alpha(alpha);
  if (node instanceof Sprite) inkSprite(ink, node, m);
  else if (node instanceof Graphics) {
    ink.at(m.a, m.b, m.c, m.d, m.tx, m.ty);
    inkGraphics(ink, node, alpha);
  } else if (node instanceof WayStrokes) {
    ink.at(m.a, m.b, m.c, m.d, m.tx, m.ty);
    node.inkOn(ink, alpha);
  }
  for (const child of node.children) inkNode(ink, child, m, alpha);
}

const within = (o: Matrix, n: Matrix): Matrix => ({
  a: o.a * n.a + o.c * n.b,
  b: o.b * n.a + o.d * n.b,
  c: o.a * n.c + o.c * n.d,
  d: o.b * n.c + o.d * n.d,
  tx: o.a * n.tx + o.c * n.ty + o.tx,
  ty: o.b * n.tx + o.d * n.ty + o.ty,
});

/** A stamp that is shown as it was painted goes on whole pixels: then it is copied, and nothing is worked out between them. */
function inkSprite(ink: Inks, { texture, anchor }: Sprite, { a, b, c, d, tx, ty }: Matrix): void {
  const picture = pictureOf(texture);
  if (picture === null) return;
  const { width, height } = texture.frame;
  const isSame = Math.abs(a - 1) < SAME && Math.abs(d - 1) < SAME && Math.abs(b) < SAME && Math.abs(c) < SAME;
  if (isSame) ink.at(1, 0, 0, 1, Math.round(tx), Math.round(ty));
  else ink.at(a, b, c, d, tx, ty);
  ink.stamp(picture, -anchor.x * width, -anchor.y * height, width, height);
}

function inkGraphics(ink: Inks, { context }: Graphics, alpha: number): void {
  for (const step of context.instructions) {
    if (step.action !== 'fill' && step.action !== 'stroke')
      throw new RangeError(`the bay does not paint "${step.action}"`);
    const { color, alpha: own } = step.data.style;
    ink.begin();
    for (const part of step.data.path.instructions) trace(ink, part);
    ink.alpha(alpha * own);
    ink.colour(`#${color.toString(16).padStart(6, '0')}`);
    if (step.action === 'fill') ink.fill();
    else strokeAs(ink, (step as StrokeInstruction).data.style);
  }
}

function strokeAs(ink: Inks, { width, cap, join }: StrokeInstruction['data']['style']): void {
  ink.line(width, cap, join);
  ink.stroke();
}

function trace(ink: Inks, { action, data }: PathStep): void {
  const shape = SHAPES[action];
  if (!shape) throw new RangeError(`the bay does not trace "${action}"`);
  shape(ink, data);
}
