/**
 * The page's end of the worker: starts it, posts commands and hands over what it tells: view and frame together, about
 * thirty times a second and never in two pictures of the screen running, so that hands have every other one to themselves.
 * One frame buffer goes to and fro. A hidden page pauses the clock.
 */
import { batch } from 'solid-js';
import type { Lapse, RunOn } from '../panels/sessionModel';
import type { Command, Outcome } from '../plant/commandSpecs';
import type { FrameMessage, FromWorker, OpenRequest, ToWorker } from './protocol';

export interface CoreListener {
  readonly opened: (message: Extract<FromWorker, { type: 'opened' }>) => void;
  readonly frame: (message: FrameMessage) => void;
  readonly seen: (message: Extract<FromWorker, { type: 'seen' }>) => void;
  readonly other: (message: Exclude<FromWorker, { type: 'opened' | 'frame' | 'seen' | 'outcome' }>) => void;
}

export interface CoreClient {
  send(command: Command): Promise<Outcome>;
  setLapse(lapse: Lapse): void;
  runOn(how: RunOn): void;
  /** What is lived for it is lent to whoever has the other end. */
  askDebrief(lend: MessagePort): void;
  /** Of the session as far as it has come. */
  askFile(): void;
  dispose(): void;
}

/** Least time between two handings over: a little under two pictures of a screen that shows sixty a second, ms. */
const APART_MS = 28;

export function startCore(request: OpenRequest, listener: CoreListener): CoreClient {
  const worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (outcome: Outcome) => void>();
  let serial = 0;
  let frame: FrameMessage | null = null;
  let seen: Extract<FromWorker, { type: 'seen' }> | null = null;
  let asked = 0;
  let shownMs = Number.NEGATIVE_INFINITY;
  /** A picture has passed since. */
  let rested = true;

  const post = (message: ToWorker, transfer: Transferable[] = []): void =>
    worker.postMessage(message, transfer);
  const giveBack = (frame: Float64Array): void =>
    post({ type: 'buffer', frame }, [frame.buffer as ArrayBuffer]);
  const ask = (): void => {
    if (asked === 0) asked = requestAnimationFrame(onPicture);
  };
  const onPicture = (now: number): void => {
    asked = 0;
    if (rested && now - shownMs >= APART_MS) show(now);
    rested = now !== shownMs;
    if (!rested || frame || seen) ask();
  };
  const show = (now: number): void => {
    const told = { frame, seen };
    if (!told.frame && !told.seen) return;
    frame = null;
    seen = null;
    shownMs = now;
    batch(() => {
      if (told.seen) listener.seen(told.seen);
      if (told.frame) listener.frame(told.frame);
    });
    if (told.frame) giveBack(told.frame.frame);
  };
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    switch (data.type) {
      case 'opened':
        giveBack(new Float64Array(data.channels.length));
        listener.opened(data);
        break;
      case 'frame':
        frame = data;
        ask();
        break;
      case 'seen':
        seen = data;
        ask();
        break;
      case 'outcome':
        waiting.get(data.serial)?.(data.outcome);
        waiting.delete(data.serial);
        break;
      default:
        listener.other(data);
    }
  };
  worker.onerror = (event) => listener.other({ type: 'failed', reason: event.message ?? '' });
  const onVisibility = (): void => post({ type: 'pause', paused: document.hidden });
  document.addEventListener('visibilitychange', onVisibility);
  post({ type: 'open', request });
  return {
    send(command) {
      serial++;
      post({ type: 'command', serial, command });
      return new Promise((resolve) => waiting.set(serial, resolve));
    },
    setLapse: (lapse) => post({ type: 'lapse', lapse }),
    runOn: (how) => post({ type: 'runOn', how }),
    askDebrief: (lend) => post({ type: 'debrief', lend }, [lend]),
    askFile: () => post({ type: 'file' }),
    dispose() {
      document.removeEventListener('visibilitychange', onVisibility);
      cancelAnimationFrame(asked);
      worker.terminate();
    },
  };
}
