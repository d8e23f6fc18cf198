/** Round what is looked at closely now: a ring about a port, a box about a part or a piece of line. */
import { Graphics } from 'pixi.js';
import { stopsOf } from '../../layout/order';
import type { SceneContext, SceneNode } from './sceneNode';

const ROOM_MM = 12;
const PORT_R_MM = 52;
const [EDGE_MM, LINE_MM] = [12, 5.5] as const;

export function lookNode(context: SceneContext): SceneNode {
  const view = new Graphics();
  const stops = stopsOf(context.layout);
  let shown: string | null = null;
  return {
    view,
    show({ looked }, fresh) {
      if (!fresh && looked === shown) return;
      shown = looked;
      view.clear();
      const stop = stops.find(({ id }) => id === looked);
      if (!stop) return;
      const [x, y, w, h] = stop.hit;
      const { ink, card } = context.palette();
      for (const [color, width] of [
        [card, EDGE_MM],
        [ink, LINE_MM],
      ] as const) {
        if (stop.kind === 'port') view.circle(stop.at[0], stop.at[1], PORT_R_MM);
        else view.roundRect(x - ROOM_MM, y - ROOM_MM, w + 2 * ROOM_MM, h + 2 * ROOM_MM, 16);
        view.stroke({ color, width });
      }
    },
  };
}
