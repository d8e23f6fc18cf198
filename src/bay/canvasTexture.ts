/** A texture that shows one canvas and goes with it. */
import { CanvasSource, Texture } from 'pixi.js';

export const canvasTexture = (canvas: HTMLCanvasElement): Texture =>
  new Texture({ source: new CanvasSource({ resource: canvas }) });
