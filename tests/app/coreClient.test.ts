/** What the page was asked for since holds at once, whatever frames on their way still say. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type CoreListener, startCore } from '../../src/app/coreClient';
import type { FrameMessage, OpenRequest, ToWorker } from '../../src/app/protocol';

class CoreWorker {
  static last: CoreWorker;
  readonly told: ToWorker[] = [];
  onmessage: (event: { data: unknown }) => void = () => undefined;
  constructor() {
    CoreWorker.last = this;
  }
  postMessage(message: ToWorker): void {
    this.told.push(message);
  }
  terminate(): void {}
}

const pictures: ((now: number) => void)[] = [];
let now = 0;
/** So many pictures of the screen, a sixtieth apart. */
function show(count = 12): void {
  for (let shown = 0; shown < count; shown++) {
    now += 1000 / 60;
    for (const picture of pictures.splice(0)) picture(now);
  }
}

beforeEach(() => {
  pictures.length = 0;
  vi.stubGlobal('Worker', CoreWorker);
  vi.stubGlobal('requestAnimationFrame', (picture: (now: number) => void) => pictures.push(picture));
  vi.stubGlobal('cancelAnimationFrame', () => undefined);
  vi.stubGlobal('document', {
    hidden: false,
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
  });
});
afterEach(() => vi.unstubAllGlobals());

const REQUEST: OpenRequest = { scenarioId: 'any', mode: 'practice', seed: 1, log: null };
const frameAt = (step: number, lapse: FrameMessage['lapse'], lapseSerial: number): FrameMessage => ({
  ...{ type: 'frame', frame: new Float64Array(1), step, lapse, lapseSerial, runningOn: null, behind: false },
});

function started(heed: (frame: FrameMessage) => void = () => undefined) {
  const frames: FrameMessage[] = [];
  const nothing = (): void => undefined;
  const listener: CoreListener = {
    frame(frame) {
      heed(frame);
      frames.push(frame);
    },
    ...{ opened: nothing, telling: nothing, seen: nothing, told: nothing, other: nothing },
  };
  return { client: startCore(REQUEST, listener), frames };
}
const comes = (frame: FrameMessage): void => CoreWorker.last.onmessage({ data: frame });

test('a frame from before the clock was set says what it was set to, one from after it what it says', () => {
  const { client, frames } = started();
  comes(frameAt(50, 1, 0));
  show();
  client.setLapse(0);
  comes(frameAt(51, 1, 0));
  show();
  client.setLapse(10);
  comes(frameAt(52, 0, 1));
  show();
  comes(frameAt(60, 10, 2));
  show();
  comes(frameAt(70, 1, 2));
  show();
  expect(frames.map(({ step, lapse }) => [step, lapse])).toEqual([
    [50, 1],
    [51, 0],
    [52, 10],
    [60, 10],
    [70, 1],
  ]);
  client.dispose();
});

test('a frame that waits for its picture while the clock is set says so too', () => {
  const { client, frames } = started();
  comes(frameAt(50, 60, 0));
  client.setLapse(0);
  show();
  expect(frames.map(({ lapse }) => lapse)).toEqual([0]);
  client.dispose();
});

test('a picture that fails gives its buffer back, and the next frame is shown', () => {
  const { client, frames } = started((frame) => {
    if (frame.step === 1) throw new Error('planted');
  });
  comes(frameAt(1, 1, 0));
  expect(() => show()).toThrow('planted');
  expect(CoreWorker.last.told.filter(({ type }) => type === 'buffer')).toHaveLength(1);
  show();
  comes(frameAt(2, 1, 0));
  show();
  expect(frames.map(({ step }) => step)).toEqual([2]);
  client.dispose();
});

test('a buffer goes back with every frame that was shown', () => {
  const { client, frames } = started();
  for (const step of [1, 2, 3]) {
    comes(frameAt(step, 1, 0));
    show();
  }
  expect(frames).toHaveLength(3);
  expect(CoreWorker.last.told.filter(({ type }) => type === 'buffer')).toHaveLength(3);
  client.dispose();
});
