/**
 * Ways stroked or filled: what is drawn anew for every picture, as a hose while it moves or a belt. Strokes bend little from
 * point to point, so their corners are cut and not rounded, which nobody sees and costs a fraction.
 */
import { Container } from 'pixi.js';
import type { Inks } from './ink/inks';
import type { Way } from './ink/way';

export interface WayStroke {
  readonly way: Way;
  /** As the way's points are, millimetres; none: it is filled. */
  readonly width: number | null;
  readonly color: string;
  readonly alpha: number;
}

export class WayStrokes extends Container {
  strokes: readonly WayStroke[] = [];

  /** In the transform that is set. */
  inkOn(ink: Inks, alpha: number): void {
    for (const { way, width, color, alpha: own } of this.strokes) {
      ink.alpha(alpha * own);
      ink.colour(color);
      ink.begin();
      way.trace(ink);
      if (width === null) ink.fill();
      else {
        ink.line(width, 'round', 'bevel');
        ink.stroke();
      }
    }
  }
}
