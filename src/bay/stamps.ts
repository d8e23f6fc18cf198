/**
 * Drawings painted once and kept as textures, by key. A stamp is painted at the size it will be seen, so it is as sharp
 * as the still layers; a change of size or theme throws all of them away.
 */
import { type Sprite, Texture } from 'pixi.js';
import { canvasTexture } from './canvasTexture';
import { boundsOf } from './drawing/bounds';
import { paint } from './drawing/painter';
import type { Palette } from './drawing/palette';
import type { Drawing } from './drawing/record';

export interface Stamp {
  readonly texture: Texture;
  /** Top left of the texture in the drawing's millimetres. */
  readonly x: number;
  readonly y: number;
  /** Millimetres per texture pixel. */
  readonly mmPerPixel: number;
}

export interface Stamps {
  get(key: string, draw: () => Drawing): Stamp;
  /** One stamp at a time under this name, for what has many states: a new key throws the old one away. */
  slot(name: string, key: string, draw: () => Drawing): Stamp;
  /** A stamp of its own, which whoever asked for it destroys. */
  once(drawing: Drawing): Stamp;
  /** Paints new stamps at `pixelsPerMm` from now on, and throws those away that were painted otherwise. */
  reset(pixelsPerMm: number, palette: Palette): void;
}

/** Room round a drawing for what its round ends and antialiasing add. */
const MARGIN_PX = 2;

export function createStamps(): Stamps {
  let kept = new Map<string, Stamp>();
  let slots = new Map<string, { readonly key: string; readonly stamp: Stamp }>();
  let pixelsPerMm = 1;
  let palette: Palette = {};
  return {
    get(key, draw) {
      const found = kept.get(key);
      if (found) return found;
      const made = makeStamp(draw(), pixelsPerMm, palette);
      kept.set(key, made);
      return made;
    },
    slot(name, key, draw) {
      const held = slots.get(name);
      if (held?.key === key) return held.stamp;
      discard(held?.stamp);
      const stamp = makeStamp(draw(), pixelsPerMm, palette);
      slots.set(name, { key, stamp });
      return stamp;
    },
    once: (drawing) => makeStamp(drawing, pixelsPerMm, palette),
    reset(newPixelsPerMm, newPalette) {
      if (newPixelsPerMm === pixelsPerMm && newPalette === palette) return;
      for (const stamp of kept.values()) discard(stamp);
      for (const { stamp } of slots.values()) discard(stamp);
      slots = new Map();
      kept = new Map();
      pixelsPerMm = newPixelsPerMm;
      palette = newPalette;
    },
  };
}

function discard(stamp: Stamp | undefined): void {
  if (stamp && stamp.texture !== Texture.EMPTY) stamp.texture.destroy(true);
}

function makeStamp(drawing: Drawing, pixelsPerMm: number, palette: Palette): Stamp {
  const box = boundsOf(drawing);
  if (box.w === 0) return { texture: Texture.EMPTY, x: 0, y: 0, mmPerPixel: 1 };
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(box.w * pixelsPerMm) + 2 * MARGIN_PX;
  canvas.height = Math.ceil(box.h * pixelsPerMm) + 2 * MARGIN_PX;
  const context = canvas.getContext('2d');
  if (!context) return { texture: Texture.EMPTY, x: 0, y: 0, mmPerPixel: 1 };
  context.setTransform(
    pixelsPerMm,
    0,
    0,
    pixelsPerMm,
    MARGIN_PX - box.x * pixelsPerMm,
    MARGIN_PX - box.y * pixelsPerMm,
  );
  paint(context, drawing, palette);
  const margin = MARGIN_PX / pixelsPerMm;
  return {
    texture: canvasTexture(canvas),
    x: box.x - margin,
    y: box.y - margin,
    mmPerPixel: 1 / pixelsPerMm,
  };
}

/** Shows a stamp with its drawing's origin at (x, y). */
export function showStamp(sprite: Sprite, stamp: Stamp, x = 0, y = 0): void {
  sprite.texture = stamp.texture;
  sprite.scale.set(stamp.mmPerPixel);
  sprite.position.set(x + stamp.x, y + stamp.y);
}
