/** Who paints: a worker that says it can, else the page; and nothing of a worker stays behind once that is known. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { FromDesk } from '../../../src/bay/ink/deskMessages';
import { type Desk, startDesk } from '../../../src/bay/ink/startDesk';

/** A worker in name: what it was told, and what a test has it say. */
class PaintWorker {
  static readonly started: PaintWorker[] = [];
  readonly told: { readonly do: string }[] = [];
  isEnded = false;
  onmessage: (event: { data: FromDesk }) => void = () => undefined;
  onerror: (event: { message: string }) => void = () => undefined;
  constructor() {
    PaintWorker.started.push(this);
  }
  postMessage(message: { readonly do: string }): void {
    this.told.push(message);
  }
  terminate(): void {
    this.isEnded = true;
  }
}

/** A canvas in name, which can be lent where the browser lends any, and takes every call of a pen. */
class Canvas {
  width = 0;
  height = 0;
  readonly drawn: string[] = [];
  getContext(): unknown {
    return new Proxy({}, { get: (_, name) => () => this.drawn.push(String(name)), set: () => true });
  }
}
class LentCanvas extends Canvas {
  isLent = false;
  transferControlToOffscreen(): string {
    this.isLent = true;
    return 'offscreen';
  }
}

const PICTURE = { numbers: new Float32Array(4), length: 0, newColours: [] };
const begin = (canvas: Canvas, painted = vi.fn()): Promise<Desk> =>
  startDesk(canvas as unknown as HTMLCanvasElement, painted);
const worker = (): PaintWorker => PaintWorker.started[0];

beforeEach(() => {
  vi.useFakeTimers();
  PaintWorker.started.length = 0;
  vi.stubGlobal('Worker', PaintWorker);
  vi.stubGlobal('HTMLCanvasElement', LentCanvas);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a worker that can is lent the canvas, and no clock runs on for it', async () => {
  const canvas = new LentCanvas();
  const painted = vi.fn();
  const starting = begin(canvas, painted);
  worker().onmessage({ data: { type: 'ready', able: true } });
  const desk = await starting;
  expect(vi.getTimerCount()).toBe(0);
  expect(canvas.isLent).toBe(true);
  desk.show(PICTURE, 300, 200);
  expect(worker().told.map((message) => message.do)).toEqual(['canvas', 'show']);
  worker().onmessage({ data: { type: 'painted', numbers: PICTURE.numbers } });
  expect(painted).toHaveBeenCalledExactlyOnceWith(PICTURE.numbers);
  desk.stop();
  expect(worker().isEnded).toBe(true);
});

test('pictures have numbers of their own, by which they are dropped', async () => {
  const starting = begin(new LentCanvas());
  worker().onmessage({ data: { type: 'ready', able: true } });
  const desk = await starting;
  const order = { width: 1, height: 1, ground: null, palette: {} as never, layers: [] };
  const [one, other] = [desk.keep(order), desk.keep(order)];
  expect(other).not.toBe(one);
  desk.drop(one);
  expect(worker().told.at(-1)).toEqual({ do: 'drop', picture: one });
});

const CANNOT: readonly (readonly [string, () => void])[] = [
  ['says that it cannot', () => worker().onmessage({ data: { type: 'ready', able: false } })],
  ['breaks', () => worker().onerror({ message: 'no such file' })],
  ['says nothing for long', () => vi.advanceTimersByTime(10_000)],
];

test.each(CANNOT)('where a worker %s the page paints, and it is ended', async (_, happens) => {
  const canvas = new LentCanvas();
  const painted = vi.fn();
  const starting = begin(canvas, painted);
  happens();
  const desk = await starting;
  expect(worker().isEnded).toBe(true);
  expect(canvas.isLent).toBe(false);
  desk.show(PICTURE, 300, 200);
  expect([canvas.width, canvas.height]).toEqual([300, 200]);
  expect(canvas.drawn).toContain('fillRect');
  expect(painted).toHaveBeenCalledExactlyOnceWith(PICTURE.numbers);
  expect(vi.getTimerCount()).toBe(0);
});

test('a worker that answers too late is not asked for anything', async () => {
  const canvas = new LentCanvas();
  const starting = begin(canvas);
  vi.advanceTimersByTime(10_000);
  await starting;
  worker().onmessage({ data: { type: 'ready', able: true } });
  expect(worker().told).toEqual([]);
  expect(canvas.isLent).toBe(false);
});

test('a browser that lends no canvas is asked for no worker', async () => {
  vi.stubGlobal('HTMLCanvasElement', Canvas);
  const canvas = new Canvas();
  (await begin(canvas)).show(PICTURE, 20, 10);
  expect(PaintWorker.started).toEqual([]);
  expect(canvas.drawn).toContain('fillRect');
});
