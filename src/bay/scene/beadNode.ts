/** The beads on a hose that carry its letter: two along it, and one where it leaves the picture. */
import { Container, Sprite } from 'pixi.js';
import type { CoupledHose, PointMm } from '../../layout/layout';
import { badge } from '../drawing/badge';
import { showStamp } from '../stamps';
import type { SceneContext } from './sceneNode';

export interface BeadNode {
  readonly view: Container;
  /** Along a hose from its coupler to the edge. */
  place(points: readonly PointMm[]): void;
}

const SHARES = [0.3, 0.72] as const;
const R_MM = 15.5;
const EDGE_R_MM = 22;

export function beadNode(context: SceneContext, hose: CoupledHose): BeadNode {
  const view = new Container();
  const along = SHARES.map(() => new Sprite());
  const edge = new Sprite();
  view.addChild(...along, edge);
  return {
    view,
    place(points) {
      const bead = context.stamps.get(`bead:${hose}`, () => badge(hose, 0, 0, R_MM));
      const leftMost = context.leftMm() + EDGE_R_MM + 8;
      SHARES.forEach((share, i) => {
        const [x, y] = points[Math.round(share * (points.length - 1))];
        along[i].visible = x > leftMost + 3.4 * EDGE_R_MM;
        showStamp(along[i], bead, x, y);
      });
      const [x, y] = points.find(([px]) => px < leftMost) ?? points[points.length - 1];
      const large = context.stamps.get(`edge:${hose}`, () => badge(hose, 0, 0, EDGE_R_MM));
      showStamp(edge, large, Math.max(leftMost, x), y);
    },
  };
}
