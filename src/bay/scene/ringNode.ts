/** Dotted rings round every place where the thing in the hand may go, the way of a hose, and the line to a finger. */
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
  /** From the tip of what is held to the finger that holds it; null where nothing hides it. */
  lead(tip: PointMm, finger: PointMm | null): void;
}

const DOT_PITCH_MM = 10;
const WAY_PITCH_MM = 17;

export function ringNode(context: SceneContext): RingNode {
  const view = new Container();
  const circles = new Graphics();
  const dots = new Graphics();
  const line = new Graphics();
  view.addChild(dots, circles, line);
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
    lead(tip, finger) {
      line.clear();
      if (!finger) return;
      for (const [ink, width] of [
        ['ink', 7],
        ['white', 4],
      ] as const) {
        line.moveTo(tip[0], tip[1]).lineTo(finger[0], finger[1]);
        line.stroke({ color: context.palette()[ink], width, cap: 'round' });
      }
      line.circle(tip[0], tip[1], 6).fill({ color: context.palette().white });
      line.circle(tip[0], tip[1], 6).stroke({ color: context.palette().ink, width: 2.4 });
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
