/** Small live things: dirt on the condenser, bubbles in a sight glass, zones to keep clear. */
import { Container, Sprite } from 'pixi.js';
import type { Part, RectMm } from '../../layout/layout';
import { keepClear } from '../drawing/gear/keepClear';
import { condenserDirt } from '../drawing/parts/condenserDirt';
import { sightGlass } from '../drawing/parts/sightGlass';
import { BEAM_HEIGHT } from '../drawing/shell/beam';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

/** Dirt fades in with what the model says the air side has lost; the beam and its shadow stay clean. */
export function dirtNode(context: SceneContext, part: Part): SceneNode {
  const view = new Sprite();
  const top = context.layout.shell.beam + BEAM_HEIGHT + 14;
  return {
    view,
    show(frame) {
      view.visible = frame.condenserDirt > 0.02;
      if (!view.visible) return;
      showStamp(
        view,
        context.stamps.get(`dirt:${part.id}`, () => condenserDirt(part, top)),
      );
      view.alpha = Math.min(1, frame.condenserDirt);
    },
  };
}

const FOAM_STEPS = 8;

export function sightGlassNode(context: SceneContext, part: Part): SceneNode {
  const view = new Sprite();
  return {
    view,
    show({ glass: { bubbles, streaked } }) {
      const foam = Math.round(bubbles * FOAM_STEPS);
      view.visible = foam > 0 || streaked;
      if (view.visible)
        showStamp(
          view,
          context.stamps.get(`glass:${streaked ? 'streaked' : foam}`, () =>
            sightGlass(6, 0, foam / FOAM_STEPS, streaked),
          ),
          part.at[0],
          part.at[1],
        );
    },
  };
}

/** Hatched zones; shown while a hose is carried, or on asking. */
export function keepClearNode(context: SceneContext): SceneNode & { setCarrying(carrying: boolean): void } {
  const view = new Container();
  let carrying = false;
  let asked = false;
  const hazards = context.layout.zones.filter((zone) => zone.hazard);
  const sprites = hazards.map(() => view.addChild(new Sprite()));
  const apply = (): void => {
    view.visible = carrying || asked;
    if (!view.visible) return;
    hazards.forEach((zone, i) => {
      const [, , w, h] = zone.rect;
      const local: RectMm = [0, 0, w, h];
      showStamp(
        sprites[i],
        context.stamps.get(`clear:${zone.id}`, () => keepClear(local)),
        zone.rect[0],
        zone.rect[1],
      );
    });
  };
  return {
    view,
    show(frame) {
      asked = frame.keepClearShown;
      apply();
    },
    setCarrying(now) {
      carrying = now;
      apply();
    },
  };
}
