/** Dotted rings: under the pointer, and round every place where the thing in the hand may go. */
import { Container, Graphics } from 'pixi.js';
import { measure, stationAt } from '../../layout/course';
import type { PointMm } from '../../layout/layout';
import type { SceneContext } from './sceneNode';

export interface Ring {
  readonly at: PointMm;
  readonly r: number;
  /** The one the pointer is over. */
  readonly strong: boolean;
}

export interface RingNode {
  readonly view: Container;
  set(rings: readonly Ring[]): void;
  /** Dots along the way a hose would be led; none clears it. */
  preview(way: readonly PointMm[]): void;
}

const DOT_PITCH_MM = 10;
const WAY_PITCH_MM = 17;

export function ringNode(context: SceneContext): RingNode {
  const view = new Container();
  const circles = new Graphics();
  const dots = new Graphics();
  view.addChild(dots, circles);
  return {
    view,
    preview(way) {
      dots.clear();
      if (way.length < 2) return;
      const course = measure(way);
      for (const [r, color] of [
        [6, context.palette().ink],
        [4, context.palette().white],
      ] as const) {
        for (let along = 0; along <= course.lengthMm; along += WAY_PITCH_MM) {
          const { x, y } = stationAt(course, along);
          dots.circle(x, y, r);
        }
        dots.fill({ color });
      }
    },
    set(rings) {
      circles.clear();
      for (const { at, r, strong } of rings) {
        const count = Math.max(8, Math.round((2 * Math.PI * r) / DOT_PITCH_MM));
        for (let i = 0; i < count; i++) {
          const angle = (i * 2 * Math.PI) / count;
          circles.circle(at[0] + Math.cos(angle) * r, at[1] + Math.sin(angle) * r, strong ? 3.4 : 2.2);
        }
        circles.fill({ color: context.palette().white, alpha: 0.95 });
        if (strong)
          circles
            .circle(at[0], at[1], r + 7)
            .stroke({ color: context.palette().ink, width: 2.4, alpha: 0.9 });
      }
    },
  };
}
