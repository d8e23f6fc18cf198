/** A service port: its cap, the bare fitting, or the cover it lies under. Under a coupler it is bare. */
import { Sprite } from 'pixi.js';
import type { Port } from '../../layout/layout';
import { port as portDrawing } from '../drawing/gear/cap';
import { portCover } from '../drawing/gear/portCover';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

export function portNode(context: SceneContext, port: Port): SceneNode {
  const view = new Sprite();
  return {
    view,
    show(frame) {
      const look = frame.ports[port.id] ?? { cap: 'blank', strap: false };
      const { cover } = port;
      if (look.covered && cover) {
        showStamp(
          view,
          context.stamps.get(`cover:${port.id}`, () => portCover(cover)),
        );
        return;
      }
      const { bore = port.boreMm } = look;
      showStamp(
        view,
        context.stamps.get(`port:${bore}:${look.cap}:${look.strap}`, () => portDrawing(bore, [0, 0], look)),
        port.at[0],
        port.at[1],
      );
    },
  };
}
