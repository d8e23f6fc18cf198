/**
 * Ways stroked or filled: what is drawn anew for every picture, as a hose while it moves or a belt. Strokes bend little from
 * point to point, so their corners are cut and not rounded, which nobody sees and costs a fraction.
 */
import { Container } from 'pixi.js';

export interface WayStroke {
  readonly way: Path2D;
  /** None: it is filled. */
  readonly width: number | null;
  readonly color: string;
  readonly alpha: number;
}

export class WayStrokes extends Container {
  strokes: readonly WayStroke[] = [];

  /** In the transform that is set. */
  inkOn(ink: CanvasRenderingContext2D, alpha: number): void {
    ink.lineCap = 'round';
    ink.lineJoin = 'bevel';
    for (const { way, width, color, alpha: own } of this.strokes) {
      ink.globalAlpha = alpha * own;
      if (width === null) {
        ink.fillStyle = color;
        ink.fill(way);
        continue;
      }
      ink.strokeStyle = color;
      ink.lineWidth = width;
      ink.stroke(way);
    }
  }
}
