/** The paint desk in a worker of its own, so that the page goes on while it paints. */
import type { CanvasMessage, DeskMessage, FromDesk } from './deskMessages';
import { createPaintDesk } from './paintDesk';

const post = (message: FromDesk, transfer: Transferable[] = []): void =>
  self.postMessage(message, { transfer });
let desk: ReturnType<typeof createPaintDesk> | null = null;

self.onmessage = ({ data }: MessageEvent<CanvasMessage | DeskMessage>) => {
  if (data.do === 'canvas') {
    desk = createPaintDesk(data.canvas, () => new OffscreenCanvas(1, 1));
    return;
  }
  try {
    desk?.(data);
  } finally {
    if (data.do === 'show')
      post({ type: 'painted', numbers: data.inked.numbers }, [data.inked.numbers.buffer]);
  }
};

post({ type: 'ready', able: new OffscreenCanvas(1, 1).getContext('2d') !== null });
