/** Frost and dew on lines and pots, by cover. Cover is drawn in steps of four hundredths: finer changes are not seen. */
import { Container, Sprite } from 'pixi.js';
import type { BayFrame } from '../bayFrame';
import { type CoverDrawing, coversOf } from '../drawing/gear/coverDrawing';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

const STEPS = 25;

export function coverNode(context: SceneContext): SceneNode {
  const view = new Container();
  const covers = coversOf(context.layout);
  const sprites = new Map<string, Sprite>();
  const spriteOf = (id: string): Sprite => {
    const found = sprites.get(id);
    if (found) return found;
    const made = new Sprite();
    sprites.set(id, made);
    view.addChild(made);
    return made;
  };
  return {
    view,
    show(frame) {
      for (const [id, draw] of covers) showCover(context, spriteOf(id), id, frame, draw);
    },
  };
}

function showCover(
  context: SceneContext,
  sprite: Sprite,
  id: string,
  frame: BayFrame,
  draw: CoverDrawing,
): void {
  const frost = Math.round((frame.frost[id] ?? 0) * STEPS);
  const sweat = Math.round((frame.sweat[id] ?? 0) * STEPS);
  sprite.visible = frost > 0 || sweat > 0;
  if (sprite.visible)
    showStamp(
      sprite,
      context.stamps.slot(`cover:${id}`, `${frost}:${sweat}`, () => draw(frost / STEPS, sweat / STEPS)),
    );
}
