/** What marks leaks for an eye: oil at the places of the loop, soap where it was put, dye under the lamp. */
import { Container, Sprite } from 'pixi.js';
import { placePoints } from '../../layout/placePoints';
import { dyeGlow, MARK_MM, oilPatch, soapFoam } from '../drawing/gear/leakMarks';
import type { Drawing } from '../drawing/record';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

export function leakNode(context: SceneContext): SceneNode {
  const view = new Container();
  const points = placePoints(context.layout);
  const sprites = new Map<string, Sprite>();
  const shown = new Set<string>();
  const put = (slot: string, at: string, state: string, draw: () => Drawing): void => {
    const point = points.get(at);
    if (!point) return;
    const sprite = sprites.get(slot) ?? new Sprite();
    if (!sprites.has(slot)) view.addChild(sprite);
    sprites.set(slot, sprite);
    shown.add(slot);
    showStamp(sprite, context.stamps.slot(slot, `${at}:${state}`, draw), ...point);
  };
  return {
    view,
    show({ stains, soap, glow }) {
      shown.clear();
      for (const [id, share] of Object.entries(stains))
        put(`stain:${id}`, id, String(share), () => oilPatch(id, 0, 0, MARK_MM, share));
      if (soap) put('soap', soap.at, String(soap.level), () => soapFoam(soap.at, 0, 0, MARK_MM, soap.level));
      if (glow) put('glow', glow.at, String(glow.level), () => dyeGlow(glow.at, 0, 0, MARK_MM, glow.level));
      for (const [slot, sprite] of sprites) sprite.visible = shown.has(slot);
    },
  };
}
