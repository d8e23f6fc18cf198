/** Where a hose's open end blows: a faint haze that drifts from its mouth. What comes slowly is not seen, and not drawn. */
import { Container, Sprite } from 'pixi.js';
import type { CoupledHose, PointMm } from '../../layout/layout';
import { hasCoupler } from '../bayFrame';
import { circle } from '../drawing/paths';
import { type Drawing, fill } from '../drawing/record';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

const PUFFS = 5;
const REACH_MM = 130;
const PUFF_MM = 34;
const PUFFS_PER_S = 1.1;

export function hazeNode(context: SceneContext, endAt: (hose: CoupledHose) => PointMm | null): SceneNode {
  const view = new Container();
  const puffs = Array.from({ length: PUFFS }, () => view.addChild(new Sprite()));
  let from: PointMm | null = null;
  let gone = 0;
  const draw = (): void => {
    view.visible = from !== null;
    if (!from) return;
    for (const [i, puff] of puffs.entries()) {
      const share = (gone + i / PUFFS) % 1;
      const stamp = context.stamps.get('puff', puffDrawing);
      showStamp(puff, stamp, from[0] + REACH_MM * share, from[1] - REACH_MM * 0.35 * share);
      puff.alpha = 0.4 * (1 - share);
    }
  };
  return {
    view,
    show({ hoses }) {
      const blowing = hoses.filter(hasCoupler).find(({ spraying }) => spraying);
      from = blowing ? endAt(blowing.id) : null;
      draw();
    },
    tick(seconds) {
      if (!from || context.still) return false;
      gone = (gone + seconds * PUFFS_PER_S) % 1;
      draw();
      return true;
    },
  };
}

const puffDrawing = (): Drawing =>
  [1, 0.8, 0.58, 0.36].map((k) => fill(circle(0, 0, PUFF_MM * k), 'dew', 0.16));
