/**
 * Paints pixi's scene onto a 2D canvas, node by node in drawing order. Everything here is a stamp or a handful of strokes,
 * so what a renderer adds (batches, masks, filters, shaders) would be fetched and never used. A node counts with its
 * transform, visibility and alpha; a sprite with its texture; graphics with fills and strokes of the shapes named below.
 */
import { type Container, Graphics, type GraphicsPath, Sprite, type StrokeInstruction } from 'pixi.js';

type Ink = CanvasRenderingContext2D;
type PathStep = GraphicsPath['instructions'][number];

/** A shape as pixi notes it: its numbers in order, then a matrix that stays as it is here. */
const SHAPES: Readonly<Record<string, (ink: Ink, data: readonly number[]) => void>> = {
  moveTo: (ink, [x, y]) => ink.moveTo(x, y),
  lineTo: (ink, [x, y]) => ink.lineTo(x, y),
  quadraticCurveTo: (ink, [cx, cy, x, y]) => ink.quadraticCurveTo(cx, cy, x, y),
  bezierCurveTo: (ink, [ax, ay, bx, by, x, y]) => ink.bezierCurveTo(ax, ay, bx, by, x, y),
  closePath: (ink) => ink.closePath(),
  rect: (ink, [x, y, w, h]) => ink.rect(x, y, w, h),
  roundRect: (ink, [x, y, w, h, radius]) => ink.roundRect(x, y, w, h, radius),
  circle(ink, [x, y, radius]) {
    ink.moveTo(x + radius, y);
    ink.arc(x, y, radius, 0, 2 * Math.PI);
  },
};

/** Throws `RangeError` for a shape, or a way of drawing, that the bay has not used so far. */
export function paintScene(ink: Ink, stage: Container): void {
  if (!stage.visible || !stage.renderable || stage.alpha <= 0) return;
  const alpha = ink.globalAlpha;
  stage.updateLocalTransform();
  const { a, b, c, d, tx, ty } = stage.localTransform;
  ink.save();
  ink.transform(a, b, c, d, tx, ty);
  ink.globalAlpha = alpha * stage.alpha;
  if (stage instanceof Sprite) paintSprite(ink, stage);
  else if (stage instanceof Graphics) paintGraphics(ink, stage);
  for (const child of stage.children) paintScene(ink, child);
  ink.restore();
}

function paintSprite(ink: Ink, { texture, anchor }: Sprite): void {
  const picture: CanvasImageSource | null = texture.source.resource;
  const { width, height } = texture.frame;
  if (picture) ink.drawImage(picture, -anchor.x * width, -anchor.y * height, width, height);
}

function paintGraphics(ink: Ink, { context }: Graphics): void {
  const alpha = ink.globalAlpha;
  for (const step of context.instructions) {
    if (step.action !== 'fill' && step.action !== 'stroke')
      throw new RangeError(`the bay does not paint "${step.action}"`);
    const { color, alpha: own } = step.data.style;
    ink.beginPath();
    for (const part of step.data.path.instructions) trace(ink, part);
    ink.globalAlpha = alpha * own;
    ink.fillStyle = ink.strokeStyle = `#${color.toString(16).padStart(6, '0')}`;
    if (step.action === 'fill') ink.fill();
    else strokeAs(ink, (step as StrokeInstruction).data.style);
  }
  ink.globalAlpha = alpha;
}

function strokeAs(ink: Ink, { width, cap, join }: StrokeInstruction['data']['style']): void {
  ink.lineWidth = width;
  ink.lineCap = cap;
  ink.lineJoin = join;
  ink.stroke();
}

function trace(ink: Ink, { action, data }: PathStep): void {
  const shape = SHAPES[action];
  if (!shape) throw new RangeError(`the bay does not trace "${action}"`);
  shape(ink, data);
}
