/**
 * The canvas of the bay and what puts a scene on it. Canvas 2D everywhere: browsers paint it on the graphics processor
 * where there is one, and without one it is faster than WebGL done in software.
 */
import type { Container } from 'pixi.js';
import { GROUND } from './ground';
import { paintScene } from './scenePainter';

export interface BayRenderer {
  readonly canvas: HTMLCanvasElement;
  /** CSS pixels. */
  resize(width: number, height: number): void;
  render(stage: Container): void;
}

/** `resolution` is device pixels a CSS pixel. Throws where the browser gives no 2D canvas. */
export function makeRenderer(width: number, height: number, resolution: number): BayRenderer {
  const canvas = document.createElement('canvas');
  const ink = canvas.getContext('2d', { alpha: false });
  if (!ink) throw new Error('no 2D canvas');
  const resize = (newWidth: number, newHeight: number): void => {
    canvas.width = Math.max(1, Math.round(newWidth * resolution));
    canvas.height = Math.max(1, Math.round(newHeight * resolution));
    canvas.style.width = `${newWidth}px`;
    canvas.style.height = `${newHeight}px`;
  };
  resize(width, height);
  return {
    canvas,
    resize,
    render(stage) {
      ink.setTransform(1, 0, 0, 1, 0, 0);
      ink.globalAlpha = 1;
      ink.fillStyle = GROUND;
      ink.fillRect(0, 0, canvas.width, canvas.height);
      paintScene(ink, stage, resolution);
    },
  };
}
