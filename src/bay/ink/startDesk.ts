/**
 * The page's end of a paint desk. It paints in a worker where the browser lends one a canvas, so that neither a picture nor a
 * new drawing holds up the page; elsewhere it paints here.
 */
import type { CanvasMessage, DeskMessage, FromDesk, PictureOrder } from './deskMessages';
import type { InkedPicture, Numbers } from './inkList';
import { createPaintDesk } from './paintDesk';

export interface Desk {
  /** Has a picture painted and kept; its number. */
  keep(order: PictureOrder): number;
  drop(picture: number): void;
  /** On a canvas of so many device pixels. */
  show(inked: InkedPicture, width: number, height: number): void;
  stop(): void;
}

/**
 * `painted`: a picture is on the canvas, and what it was written in may be used again. Rejects where the browser gives no 2D
 * canvas.
 */
export async function startDesk(
  canvas: HTMLCanvasElement,
  painted: (numbers: Numbers) => void,
): Promise<Desk> {
  const worker = await ableWorker();
  return worker ? inWorker(worker, canvas, painted) : inPage(canvas, painted);
}

/** One that has not answered by then is not waited for. */
const PATIENCE_MS = 10_000;

/** Null where no worker can paint. */
function ableWorker(): Promise<Worker | null> {
  if (!('transferControlToOffscreen' in HTMLCanvasElement.prototype)) return Promise.resolve(null);
  const worker = new Worker(new URL('./paint.worker.ts', import.meta.url), { type: 'module' });
  return new Promise((resolve) => {
    let isAnswered = false;
    const answer = (isAble: boolean): void => {
      if (isAnswered) return;
      isAnswered = true;
      clearTimeout(patience);
      if (!isAble) worker.terminate();
      resolve(isAble ? worker : null);
    };
    const patience = setTimeout(() => answer(false), PATIENCE_MS);
    worker.onmessage = ({ data }: MessageEvent<FromDesk>) => answer(data.type === 'ready' && data.able);
    worker.onerror = () => answer(false);
  });
}

function inWorker(worker: Worker, canvas: HTMLCanvasElement, painted: (numbers: Numbers) => void): Desk {
  const post = (message: CanvasMessage | DeskMessage, transfer: Transferable[] = []): void =>
    worker.postMessage(message, transfer);
  worker.onmessage = ({ data }: MessageEvent<FromDesk>) => {
    if (data.type === 'painted') painted(data.numbers);
  };
  worker.onerror = ({ message }) => {
    throw new Error(`the bay was not painted: ${message}`);
  };
  const lent = canvas.transferControlToOffscreen();
  post({ do: 'canvas', canvas: lent }, [lent]);
  return desk(
    post,
    (inked, width, height) => post({ do: 'show', width, height, inked }, [inked.numbers.buffer]),
    () => worker.terminate(),
  );
}

function inPage(canvas: HTMLCanvasElement, painted: (numbers: Numbers) => void): Desk {
  const take = createPaintDesk(canvas, () => document.createElement('canvas'));
  const show: Desk['show'] = (inked, width, height) => {
    try {
      take({ do: 'show', width, height, inked });
    } finally {
      painted(inked.numbers);
    }
  };
  return desk(take, show, () => undefined);
}

function desk(tell: (message: DeskMessage) => void, show: Desk['show'], stop: () => void): Desk {
  let pictures = 0;
  return {
    keep(order) {
      pictures++;
      tell({ do: 'keep', picture: pictures, order });
      return pictures;
    },
    drop: (picture) => tell({ do: 'drop', picture }),
    show,
    stop,
  };
}
