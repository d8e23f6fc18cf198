/**
 * The still picture in two, painted for the pixels the host shows and a margin round them, which is met while
 * the picture is moved. The base holds everything but, inside
 * a window round the fans, only what lies below their blades; the patch, no larger than the window, holds what lies above
 * them there. So a repaint copies the host's area once, and a small patch.
 */
import { Sprite, Texture } from 'pixi.js';
import type { RectMm } from '../../layout/layout';
import type { Camera, HostSize } from '../camera';
import type { Matrix } from '../drawing/matrix';
import type { Palette } from '../drawing/palette';
import type { BayPicture } from '../drawing/picture';
import { GROUND } from '../ground';
import type { PictureOrder, Pixels } from '../ink/deskMessages';
import type { Desk } from '../ink/startDesk';
import { pictureTexture } from '../pictureTexture';

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
export function createStillLayers(desk: Desk, window: RectMm): StillLayers {
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
      const matrix = toBay(camera, k, 0, 0);
      const layers = [
        { drawing: picture.below, matrix },
        { drawing: picture.above, matrix, but: hole },
      ];
      show(desk, base, [0, 0], resolution, { width, height, ground: GROUND, palette, layers });
      show(desk, patch, [hole.x, hole.y], resolution, {
        width: hole.w,
        height: hole.h,
        ground: null,
        palette,
        layers: [{ drawing: picture.above, matrix: toBay(camera, k, hole.x, hole.y) }],
      });
      for (const sprite of [base, patch]) {
        sprite.position.x -= marginPx;
        sprite.position.y -= marginPx;
      }
    },
  };
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

const toBay = (camera: Camera, k: number, left: number, top: number): Matrix => [
  k,
  0,
  0,
  k,
  -camera.x * k - left,
  -camera.y * k - top,
];

/** Has a new picture painted and shows it with its top left at a device pixel. */
function show(
  desk: Desk,
  sprite: Sprite,
  [x, y]: readonly [number, number],
  resolution: number,
  order: PictureOrder,
): void {
  if (sprite.texture !== Texture.EMPTY) sprite.texture.destroy(true);
  sprite.texture = Texture.EMPTY;
  sprite.visible = order.width > 0 && order.height > 0;
  if (!sprite.visible) return;
  sprite.texture = pictureTexture(desk, order);
  sprite.scale.set(1 / resolution);
  sprite.position.set(x / resolution, y / resolution);
}
