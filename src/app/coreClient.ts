/**
 * The page's end of the worker: starts it, posts commands and hands over what it tells. Frames, which needles follow, come
 * about thirty times a second and never in two pictures of the screen running, so that hands have every other one to
 * themselves. What is read as words follows five times a second, and at once after a hand did something; a view that
 * changed and what the instruments say come in pictures of their own. One frame buffer goes to and fro. A hidden page pauses the clock.
 */
import { batch } from 'solid-js';
import type { Lapse, RunOn } from '../panels/sessionModel';
import type { Command, Outcome } from '../plant/commandSpecs';
import type { FrameMessage, FromWorker, OpenRequest, ToWorker } from './protocol';

export interface CoreListener {
  readonly opened: (message: Extract<FromWorker, { type: 'opened' }>) => void;
  readonly frame: (message: FrameMessage) => void;
  /** In the next picture something is told, which takes most of it. */
  readonly telling: () => void;
  readonly seen: (message: Extract<FromWorker, { type: 'seen' }>) => void;
  /** Time to say what was brought. */
  readonly told: () => void;
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
/** Least time between two tellings; less after a hand did something. */
const [TOLD_MS, HURRIED_MS] = [200, 60] as const;
/** And by how many times what a telling takes: so a slow machine is told more seldom, and has time for its hands. */
const [TOLD_TIMES, HURRIED_TIMES] = [12, 2] as const;
/** Tellings that are hurried after an answer: what it changed, and what the instruments make of it. */
const HURRIED = 2;
/** What the last telling says of how long one takes. */
const WEIGHT = 0.2;

export function startCore(request: OpenRequest, listener: CoreListener): CoreClient {
  const worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (outcome: Outcome) => void>();
  let serial = 0;
  let frame: FrameMessage | null = null;
  let seen: Extract<FromWorker, { type: 'seen' }> | null = null;
  let asked = 0;
  let shownMs = Number.NEGATIVE_INFINITY;
  let toldMs = Number.NEGATIVE_INFINITY;
  /** How long a telling takes until its picture is painted, evened out. */
  let takesMs = 0;
  let hurried = 0;
  let isUntold = false;
  let isTelling = false;
  /** A changed view was told, and not yet what the instruments say. */
  let isHalfTold = false;
  /** A picture has passed since. */
  let rested = true;

  const post = (message: ToWorker, transfer: Transferable[] = []): void =>
    worker.postMessage(message, transfer);
  const giveBack = (frame: Float64Array): void =>
    post({ type: 'buffer', frame }, [frame.buffer as ArrayBuffer]);
  const ask = (): void => {
    if (asked === 0) asked = requestAnimationFrame(onPicture);
  };
  const hurry = (): void => {
    hurried = HURRIED;
  };
  const isDue = (now: number): boolean =>
    now - toldMs >=
    (hurried > 0 ? Math.max(HURRIED_MS, HURRIED_TIMES * takesMs) : Math.max(TOLD_MS, TOLD_TIMES * takesMs));
  const { port1: painted, port2: paintedNow } = new MessageChannel();
  painted.onmessage = () => {
    takesMs += (performance.now() - toldMs - takesMs) * WEIGHT;
  };
  const onPicture = (now: number): void => {
    asked = 0;
    if (rested && now - shownMs >= APART_MS) show(now);
    rested = now !== shownMs;
    isTelling = rested && isDue(now) && (frame !== null || seen !== null || isUntold);
    if (isTelling) listener.telling();
    if (!rested || frame || seen || isUntold) ask();
  };
  const show = (now: number): void => {
    const brought = frame;
    const isTold = isTelling || (isHalfTold && isUntold);
    if (!brought && !isTold) return;
    const view = isTold ? seen : null;
    frame = null;
    shownMs = now;
    isHalfTold = view !== null;
    isUntold = !isTold || isHalfTold;
    if (isTold) {
      seen = null;
      hurried = Math.max(0, hurried - 1);
      toldMs = performance.now();
      paintedNow.postMessage(null);
    }
    batch(() => {
      if (brought) listener.frame(brought);
      if (view) listener.seen(view);
      else if (isTold) listener.told();
    });
    if (brought) giveBack(brought.frame);
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
        hurry();
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
    setLapse(lapse) {
      hurry();
      post({ type: 'lapse', lapse });
    },
    runOn(how) {
      hurry();
      post({ type: 'runOn', how });
    },
    askDebrief: (lend) => post({ type: 'debrief', lend }, [lend]),
    askFile: () => post({ type: 'file' }),
    dispose() {
      document.removeEventListener('visibilitychange', onVisibility);
      cancelAnimationFrame(asked);
      painted.close();
      worker.terminate();
    },
  };
}
