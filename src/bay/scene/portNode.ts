/** A service port: its cap, or the bare fitting. Under a coupler it is bare. */
import { Sprite } from 'pixi.js';
import type { Port } from '../../layout/layout';
import { port as portDrawing } from '../drawing/gear/cap';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

export function portNode(context: SceneContext, port: Port): SceneNode {
  const view = new Sprite();
  return {
    view,
    show(frame) {
      const look = frame.ports[port.id] ?? { cap: 'blank', strap: false };
      const draw = () => portDrawing(port.boreMm, [0, 0], look);
      showStamp(
        view,
        context.stamps.get(`port:${port.boreMm}:${look.cap}:${look.strap}`, draw),
        port.at[0],
        port.at[1],
      );
    },
  };
}
