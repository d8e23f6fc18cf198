/** The free end of a second hose for a can, where two are out: it lies on the mat, or is in the hand. */
import { Container, Sprite } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import type { CanInlet } from '../bayFrame';
import { badge } from '../drawing/badge';
import { chargingEnd } from '../drawing/gear/coupler';
import { createChain, type HoseChain, laidAlong } from '../hose/chain';
import { drape, IN_HAND_MM } from '../hose/drape';
import { freeEndAt } from '../hose/freeEndAt';
import { canWay } from '../hose/hoseWays';
import { leadingEnd } from '../hose/leadingEnd';
import { stepsIn } from '../hose/stepsIn';
import { showStamp } from '../stamps';
import { CAN_HOSE_MM, END_MM, LAID_STEPS } from './canHose';
import { createHosePaint, type HangingPoint, toLeftEdge } from './hosePaint';
import type { SceneContext, SceneNode } from './sceneNode';

export interface SpareEndNode extends SceneNode {
  /** Its end in the hand at a point; null lets it fall back. */
  carry(at: PointMm | null): void;
}

export function spareEndNode(context: SceneContext): SpareEndNode {
  const view = new Container();
  const hose = createHosePaint(context);
  const [bead, end] = [new Sprite(), new Sprite()];
  view.addChild(hose.view, bead, end);
  let lies: { readonly inlet: CanInlet; readonly at: PointMm } | null = null;
  let chain: HoseChain | null = null;
  let isHeld = false;
  let moving = false;
  view.visible = false;

  const draw = (): void => {
    view.visible = lies !== null;
    if (!lies || !chain) return;
    const points = toLeftEdge(chain.points(), context.leftMm());
    const heights = drape(context.layout, points, isHeld ? IN_HAND_MM : 0);
    const hanging = points.map(([x, y], i): HangingPoint => [x, y, heights[i]]);
    hose.paint(hanging, { ink: 'chg', widthMm: CAN_HOSE_MM }, moving || isHeld);
    const { inlet } = lies;
    const [x, y] = points[0];
    showStamp(end, context.stamps.get('charging-end', chargingEnd), x + END_MM, y);
    showStamp(
      bead,
      context.stamps.get(`bead:${inlet}`, () => badge(inlet, 0, 0, 17)),
      ...points[Math.round(points.length * 0.62)],
    );
  };
  const way = (at: PointMm): readonly PointMm[] => laidAlong(canWay(context.layout, null, 0, at), LAID_STEPS);
  return {
    view,
    show(frame, fresh) {
      const inlet = frame.ends?.find((one) => one !== leadingEnd(frame)) ?? null;
      const isSame = inlet === (lies?.inlet ?? null);
      if (isSame && !fresh) return;
      if (!isSame) {
        chain?.dispose();
        lies = inlet && { inlet, at: freeEndAt(context.layout, frame, inlet) };
        chain = lies && createChain(way(lies.at));
        moving = false;
      }
      draw();
    },
    carry(at) {
      if (!lies || !chain || (at === null && !isHeld)) return;
      isHeld = at !== null;
      if (at) chain.pull([at[0] - END_MM, at[1]]);
      else if (context.still) {
        chain.dispose();
        chain = createChain(way(lies.at));
      } else chain.sendHome(way(lies.at));
      moving = !context.still || isHeld;
      draw();
    },
    tick(seconds) {
      if (!moving || !chain) return false;
      moving = chain.step(stepsIn(seconds));
      draw();
      return true;
    },
  };
}
