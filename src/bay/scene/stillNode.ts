/** A still layer: painted for exactly the pixels the host shows, so it is copied to the screen one to one. */
import { Sprite, Texture } from 'pixi.js';
import type { Camera, HostSize } from '../camera';
import { paint } from '../drawing/painter';
import type { Palette } from '../drawing/palette';
import type { Drawing } from '../drawing/record';

export interface StillLayer {
  readonly view: Sprite;
  paint(drawing: Drawing, palette: Palette, camera: Camera, size: HostSize, resolution: number): void;
}

export function createStillLayer(): StillLayer {
  const view = new Sprite();
  const canvas = document.createElement('canvas');
  let texture: Texture | null = null;
  return {
    view,
    paint(drawing, palette, camera, size, resolution) {
      canvas.width = Math.max(1, Math.round(size.width * resolution));
      canvas.height = Math.max(1, Math.round(size.height * resolution));
      const context = canvas.getContext('2d');
      if (!context) return;
      const k = camera.scale * resolution;
      context.setTransform(k, 0, 0, k, -camera.x * k, -camera.y * k);
      paint(context, drawing, palette);
      texture?.destroy(true);
      texture = Texture.from(canvas, true);
      view.texture = texture;
      view.scale.set(1 / resolution);
    },
  };
}
