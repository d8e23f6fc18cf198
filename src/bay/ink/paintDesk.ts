/** Where pictures are painted and kept, and the scene is put on its canvas: in a worker, or in the page where there is none. */
import { type Ink2D, paint } from '../drawing/painter';
import { GROUND } from '../ground';
import type { DeskMessage, PictureOrder } from './deskMessages';
import type { InkedPicture } from './inkList';
import { replay } from './replay';

type AnyCanvas = HTMLCanvasElement | OffscreenCanvas;

/** `blank` makes a canvas of its own. Throws where the browser gives no 2D canvas. */
export function createPaintDesk(canvas: AnyCanvas, blank: () => AnyCanvas): (message: DeskMessage) => void {
  const pictures = new Map<number, CanvasImageSource>();
  const colours: string[] = [];
  const ink = contextOf(canvas, false);
  const show = ({ numbers, length, newColours }: InkedPicture, width: number, height: number): void => {
    if (canvas.width !== width) canvas.width = width;
    if (canvas.height !== height) canvas.height = height;
    colours.push(...newColours);
    ink.setTransform(1, 0, 0, 1, 0, 0);
    ink.globalAlpha = 1;
    ink.fillStyle = GROUND;
    ink.fillRect(0, 0, width, height);
    replay(ink, numbers, length, colours, pictures);
  };
  /** A bitmap is large beside what the collector sees of it, so it is closed. */
  const drop = (picture: number): void => {
    const kept = pictures.get(picture);
    if (kept && 'close' in kept) kept.close();
    pictures.delete(picture);
  };
  return (message) => {
    if (message.do === 'keep') pictures.set(message.picture, painted(message.order, blank()));
    else if (message.do === 'drop') drop(message.picture);
    else show(message.inked, message.width, message.height);
  };
}

function contextOf(canvas: AnyCanvas, alpha: boolean): Ink2D {
  const ink = canvas.getContext('2d', { alpha }) as Ink2D | null;
  if (!ink) throw new Error('no 2D canvas');
  return ink;
}

function painted(
  { width, height, ground, palette, layers }: PictureOrder,
  canvas: AnyCanvas,
): CanvasImageSource {
  canvas.width = width;
  canvas.height = height;
  const ink = contextOf(canvas, ground === null);
  if (ground !== null) {
    ink.fillStyle = ground;
    ink.fillRect(0, 0, width, height);
  }
  for (const { drawing, matrix, but } of layers) {
    ink.save();
    if (but) {
      ink.beginPath();
      ink.rect(0, 0, width, height);
      ink.rect(but.x, but.y, but.w, but.h);
      ink.clip('evenodd');
    }
    ink.setTransform(...matrix);
    paint(ink, drawing, palette);
    ink.restore();
  }
  return 'transferToImageBitmap' in canvas ? canvas.transferToImageBitmap() : canvas;
}
