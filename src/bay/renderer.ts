/**
 * The canvas of the bay and what puts a scene on it. Canvas 2D everywhere: browsers paint it on the graphics processor
 * where there is one, and without one it is faster than WebGL done in software. The scene is inked as a list here and
 * painted at the desk; the next one is inked when that is done.
 */
import type { Container } from 'pixi.js';
import { createInkList } from './ink/inkList';
import { type Desk, startDesk } from './ink/startDesk';
import { inkScene } from './inkScene';

export interface BayRenderer {
  readonly canvas: HTMLCanvasElement;
  readonly desk: Desk;
  /** CSS pixels. */
  resize(width: number, height: number): void;
  render(stage: Container): void;
  /** The last picture is still being painted. */
  isBusy(): boolean;
}

/** `resolution` is device pixels a CSS pixel. Throws where the browser gives no 2D canvas. */
export async function makeRenderer(width: number, height: number, resolution: number): Promise<BayRenderer> {
  const canvas = document.createElement('canvas');
  const inks = createInkList();
  let isPainting = false;
  const desk = await startDesk(canvas, (numbers) => {
    inks.giveBack(numbers);
    isPainting = false;
  });
  let pixels: readonly [number, number] = [1, 1];
  const resize = (newWidth: number, newHeight: number): void => {
    pixels = [
      Math.max(1, Math.round(newWidth * resolution)),
      Math.max(1, Math.round(newHeight * resolution)),
    ];
    canvas.style.width = `${newWidth}px`;
    canvas.style.height = `${newHeight}px`;
  };
  resize(width, height);
  return {
    canvas,
    desk,
    resize,
    render(stage) {
      inkScene(inks, stage, resolution);
      isPainting = true;
      desk.show(inks.taken(), ...pixels);
    },
    isBusy: () => isPainting,
  };
}
