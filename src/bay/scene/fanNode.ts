/** Blades of a fan: standing, or a round picture of motion that is turned and then squashed to the mouth. */
import { Container, Sprite } from 'pixi.js';
import type { Part } from '../../layout/layout';
import { fanHub, fanPlace, fanStill, fanTurning } from '../drawing/parts/fan';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

/** Turns a second on screen: slower than a real fan, fast enough to be read as motion. */
const TURNS_PER_S = 1.4;

export function fanNode(context: SceneContext, part: Part): SceneNode {
  const view = new Container();
  const standing = new Sprite();
  const squashed = new Container();
  const spinner = new Container();
  const blur = new Sprite();
  const hub = new Sprite();
  const { x, y, squash } = fanPlace(part);
  spinner.addChild(blur);
  squashed.addChild(spinner);
  squashed.position.set(x, y);
  squashed.scale.set(1, squash);
  view.addChild(standing, squashed, hub);
  let turning = false;
  let speed = 1;
  return {
    view,
    show(frame) {
      turning = frame.fansTurning[part.id] ?? false;
      speed = frame.fanSpeeds[part.id] ?? 1;
      standing.visible = !turning;
      squashed.visible = turning;
      hub.visible = turning;
      if (turning) {
        showStamp(
          blur,
          context.stamps.get(`fan-blur:${part.id}`, () => fanTurning(part)),
        );
        showStamp(
          hub,
          context.stamps.get(`fan-hub:${part.id}`, () => fanHub(part)),
        );
      } else
        showStamp(
          standing,
          context.stamps.get(`fan:${part.id}`, () => fanStill(part)),
        );
    },
    tick(seconds) {
      if (!turning || context.still) return false;
      spinner.rotation += seconds * TURNS_PER_S * speed * 2 * Math.PI;
      return true;
    },
  };
}
