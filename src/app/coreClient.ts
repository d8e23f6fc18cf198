/**
 * The page's end of the worker: starts it, posts commands, keeps three frame buffers going round and hands the latest
 * frame over at most once a display frame. A hidden page pauses the clock.
 */
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

const BUFFERS = 3;

export function startCore(request: OpenRequest, listener: CoreListener): CoreClient {
  const worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (outcome: Outcome) => void>();
  let serial = 0;
  let latest: FrameMessage | null = null;
  let asked = 0;

  const post = (message: ToWorker, transfer: Transferable[] = []): void =>
    worker.postMessage(message, transfer);
  const giveBack = (frame: Float64Array): void =>
    post({ type: 'buffer', frame }, [frame.buffer as ArrayBuffer]);
  const paint = (): void => {
    asked = 0;
    if (!latest) return;
    const message = latest;
    latest = null;
    listener.frame(message);
    giveBack(message.frame);
  };
  const takeFrame = (message: FrameMessage): void => {
    if (latest) giveBack(latest.frame);
    latest = message;
    if (asked === 0) asked = requestAnimationFrame(paint);
  };
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    switch (data.type) {
      case 'opened':
        for (let i = 0; i < BUFFERS; i++) giveBack(new Float64Array(data.channels.length));
        listener.opened(data);
        break;
      case 'frame':
        takeFrame(data);
        break;
      case 'seen':
        listener.seen(data);
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
