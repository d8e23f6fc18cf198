/** Dotted rings: under the pointer, and round every place where the thing in the hand may go. */
import { Graphics } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import type { SceneContext } from './sceneNode';

export interface Ring {
  readonly at: PointMm;
  readonly r: number;
  /** The one the pointer is over. */
  readonly strong: boolean;
}

export interface RingNode {
  readonly view: Graphics;
  set(rings: readonly Ring[]): void;
}

const DOT_PITCH_MM = 10;

export function ringNode(context: SceneContext): RingNode {
  const view = new Graphics();
  return {
    view,
    set(rings) {
      view.clear();
      for (const { at, r, strong } of rings) {
        const dots = Math.max(8, Math.round((2 * Math.PI * r) / DOT_PITCH_MM));
        for (let i = 0; i < dots; i++) {
          const angle = (i * 2 * Math.PI) / dots;
          view.circle(at[0] + Math.cos(angle) * r, at[1] + Math.sin(angle) * r, strong ? 3.4 : 2.2);
        }
        view.fill({ color: context.palette().white, alpha: 0.95 });
        if (strong)
          view.circle(at[0], at[1], r + 7).stroke({ color: context.palette().ink, width: 2.4, alpha: 0.9 });
      }
    },
  };
}
