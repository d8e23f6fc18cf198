/**
 * The still picture on two canvases, painted for the pixels the host shows and a margin round them, which is met while
 * the picture is moved. The base holds everything but, inside
 * a window round the fans, only what lies below their blades; the patch, no larger than the window, holds what lies above
 * them there. So a repaint copies the host's area once, and a small patch.
 */
import { Sprite, Texture } from 'pixi.js';
import type { RectMm } from '../../layout/layout';
import type { Camera, HostSize } from '../camera';
import { canvasTexture } from '../canvasTexture';
import { type Ink2D, paint } from '../drawing/painter';
import type { Palette } from '../drawing/palette';
import type { BayPicture } from '../drawing/picture';
import { GROUND } from '../ground';

export interface StillLayers {
  readonly base: Sprite;
  readonly patch: Sprite;
  /** `marginPx`: how far past the host it is painted, CSS pixels. */
  paint(
    picture: BayPicture,
    palette: Palette,
    seen: Camera,
    size: HostSize,
    resolution: number,
    marginPx: number,
  ): void;
}

/** `window` in mm: where something moves between the two. */
export function createStillLayers(window: RectMm): StillLayers {
  const [base, patch] = [new Sprite(), new Sprite()];
  return {
    base,
    patch,
    paint(picture, palette, seen, size, resolution, marginPx) {
      const k = seen.scale * resolution;
      const marginMm = marginPx / seen.scale;
      const camera = { ...seen, x: seen.x - marginMm, y: seen.y - marginMm };
      const width = Math.round((size.width + 2 * marginPx) * resolution);
      const height = Math.round((size.height + 2 * marginPx) * resolution);
      const hole = pixelsOf(window, camera, k, width, height);
      show(base, 0, 0, width, height, resolution, false, (context) => {
        context.fillStyle = GROUND;
        context.fillRect(0, 0, width, height);
        toBay(context, camera, k, 0, 0);
        paint(context, picture.below, palette);
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.beginPath();
        context.rect(0, 0, width, height);
        context.rect(hole.x, hole.y, hole.w, hole.h);
        context.clip('evenodd');
        toBay(context, camera, k, 0, 0);
        paint(context, picture.above, palette);
      });
      show(patch, hole.x, hole.y, hole.w, hole.h, resolution, true, (context) => {
        toBay(context, camera, k, hole.x, hole.y);
        paint(context, picture.above, palette);
      });
      for (const sprite of [base, patch]) {
        sprite.position.x -= marginPx;
        sprite.position.y -= marginPx;
      }
    },
  };
}

interface Pixels {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** The window in whole device pixels, cut to the host. */
function pixelsOf([x, y, w, h]: RectMm, camera: Camera, k: number, width: number, height: number): Pixels {
  const within = (value: number, most: number): number => Math.max(0, Math.min(most, value));
  const left = within(Math.floor((x - camera.x) * k), width);
  const top = within(Math.floor((y - camera.y) * k), height);
  const right = within(Math.ceil((x + w - camera.x) * k), width);
  const bottom = within(Math.ceil((y + h - camera.y) * k), height);
  return { x: left, y: top, w: right - left, h: bottom - top };
}

function toBay(context: Ink2D, camera: Camera, k: number, left: number, top: number): void {
  context.setTransform(k, 0, 0, k, -camera.x * k - left, -camera.y * k - top);
}

/** Paints a new canvas and shows it with its top left at a device pixel. One that nothing is seen through is copied faster. */
function show(
  sprite: Sprite,
  x: number,
  y: number,
  width: number,
  height: number,
  resolution: number,
  alpha: boolean,
  draw: (context: CanvasRenderingContext2D) => void,
): void {
  if (sprite.texture !== Texture.EMPTY) sprite.texture.destroy(true);
  sprite.texture = Texture.EMPTY;
  sprite.visible = width > 0 && height > 0;
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { alpha });
  if (!sprite.visible || !context) return;
  canvas.width = width;
  canvas.height = height;
  draw(context);
  sprite.texture = canvasTexture(canvas);
  sprite.scale.set(1 / resolution);
  sprite.position.set(x / resolution, y / resolution);
}
