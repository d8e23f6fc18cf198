/**
 * Drawings painted once and kept as textures, by key. A stamp is painted at the size it will be seen, so it is as sharp
 * as the still layers; a change of size or theme throws all of them away.
 */
import { type Sprite, Texture } from 'pixi.js';
import { boundsOf } from './drawing/bounds';
import type { Palette } from './drawing/palette';
import type { Drawing } from './drawing/record';
import type { Desk } from './ink/startDesk';
import { pictureTexture } from './pictureTexture';

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

export function createStamps(desk: Desk): Stamps {
  let kept = new Map<string, Stamp>();
  let slots = new Map<string, { readonly key: string; readonly stamp: Stamp }>();
  let pixelsPerMm = 1;
  let palette: Palette = {};
  return {
    get(key, draw) {
      const found = kept.get(key);
      if (found) return found;
      const made = makeStamp(desk, draw(), pixelsPerMm, palette);
      kept.set(key, made);
      return made;
    },
    slot(name, key, draw) {
      const held = slots.get(name);
      if (held?.key === key) return held.stamp;
      discard(held?.stamp);
      const stamp = makeStamp(desk, draw(), pixelsPerMm, palette);
      slots.set(name, { key, stamp });
      return stamp;
    },
    once: (drawing) => makeStamp(desk, drawing, pixelsPerMm, palette),
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

function makeStamp(desk: Desk, drawing: Drawing, pixelsPerMm: number, palette: Palette): Stamp {
  const box = boundsOf(drawing);
  if (box.w === 0) return { texture: Texture.EMPTY, x: 0, y: 0, mmPerPixel: 1 };
  const margin = MARGIN_PX / pixelsPerMm;
  const [x, y] = [box.x - margin, box.y - margin];
  const texture = pictureTexture(desk, {
    width: Math.ceil(box.w * pixelsPerMm) + 2 * MARGIN_PX,
    height: Math.ceil(box.h * pixelsPerMm) + 2 * MARGIN_PX,
    ground: null,
    palette,
    layers: [{ drawing, matrix: [pixelsPerMm, 0, 0, pixelsPerMm, -x * pixelsPerMm, -y * pixelsPerMm] }],
  });
  return { texture, x, y, mmPerPixel: 1 / pixelsPerMm };
}

/** Shows a stamp with its drawing's origin at (x, y). */
export function showStamp(sprite: Sprite, stamp: Stamp, x = 0, y = 0): void {
  sprite.texture = stamp.texture;
  sprite.scale.set(stamp.mmPerPixel);
  sprite.position.set(x + stamp.x, y + stamp.y);
}
