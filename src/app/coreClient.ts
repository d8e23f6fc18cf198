/**
 * The page's end of the worker: starts it, posts commands and hands over what it tells, in the pictures of the screen that
 * `newsTurns` has for it. One frame buffer goes to and fro. A hidden page pauses the clock.
 */
import { batch } from 'solid-js';
import { pictureTimer } from '../bay/pictureTimer';
import type { Lapse, RunOn } from '../panels/sessionModel';
import type { Command, Outcome } from '../plant/commandSpecs';
import { newsTurns } from './newsTurns';
import type { FrameMessage, FromWorker, OpenRequest, ToWorker } from './protocol';

export interface CoreListener {
  readonly opened: (message: Extract<FromWorker, { type: 'opened' }>) => void;
  readonly frame: (message: FrameMessage) => void;
  /** One of the next pictures tells something, which takes most of it. */
  readonly telling: () => void;
  readonly seen: (message: Extract<FromWorker, { type: 'seen' }>) => void;
  /** Time to say what frames have brought. */
  readonly told: () => void;
  readonly other: (message: Exclude<FromWorker, { type: 'opened' | 'frame' | 'seen' | 'outcome' }>) => void;
}

export interface CoreClient {
  send(command: Command): Promise<Outcome>;
  setLapse(lapse: Lapse): void;
  runOn(how: RunOn): void;
  /** What is lived for it is lent to whoever has the other end. */
  askDebrief(lend: MessagePort): void;
  /** What debrief and what-if need is fetched ahead. */
  fetchEnd(): void;
  /** Of the session as far as it has come. */
  askFile(): void;
  dispose(): void;
}

export function startCore(request: OpenRequest, listener: CoreListener): CoreClient {
  const worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (outcome: Outcome) => void>();
  let serial = 0;
  let lapses = 0;
  let lapseAsked: Lapse = 0;
  let frame: FrameMessage | null = null;
  let seen: Extract<FromWorker, { type: 'seen' }> | null = null;
  let asked = 0;
  const turns = newsTurns();
  const timer = pictureTimer(turns.took);

  const post = (message: ToWorker, transfer: Transferable[] = []): void =>
    worker.postMessage(message, transfer);
  const giveBack = (frame: Float64Array): void =>
    post({ type: 'buffer', frame }, [frame.buffer as ArrayBuffer]);
  /** What the clock was asked for since is true at once: the next press goes by it. */
  const asAsked = (came: FrameMessage): FrameMessage =>
    came.lapseSerial === lapses ? came : { ...came, lapse: lapseAsked, runningOn: null };
  const ask = (): void => {
    if (asked === 0) asked = requestAnimationFrame(onPicture);
  };
  const onPicture = (now: number): void => {
    asked = 0;
    const turn = turns.next(now);
    if (turn.isTelling) listener.telling();
    const [brought, view] = [turn.frame ? frame : null, turn.view ? seen : null];
    if (brought) frame = null;
    if (view) seen = null;
    timer.begin();
    if (turn.view || turn.words) timer.count();
    try {
      batch(() => {
        if (brought) listener.frame(asAsked(brought));
        if (view) listener.seen(view);
        if (turn.words) listener.told();
      });
    } finally {
      if (brought) giveBack(brought.frame);
      if (turns.isWaiting()) ask();
    }
  };
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    switch (data.type) {
      case 'opened':
        giveBack(new Float64Array(data.channels.length));
        listener.opened(data);
        break;
      case 'frame':
        frame = data;
        turns.frameCame();
        ask();
        break;
      case 'seen':
        seen = data;
        turns.viewCame();
        ask();
        break;
      case 'outcome':
        turns.hurry();
        waiting.get(data.serial)?.(data.outcome);
        waiting.delete(data.serial);
        break;
      default:
        if (data.type === 'clockFell') turns.hurry();
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
      turns.hurry();
      lapses++;
      lapseAsked = lapse;
      post({ type: 'lapse', serial: lapses, lapse });
    },
    runOn(how) {
      turns.hurry();
      post({ type: 'runOn', how });
    },
    askDebrief: (lend) => post({ type: 'debrief', lend }, [lend]),
    fetchEnd: () => post({ type: 'fetchEnd' }),
    askFile: () => post({ type: 'file' }),
    dispose() {
      document.removeEventListener('visibilitychange', onVisibility);
      cancelAnimationFrame(asked);
      timer.stop();
      worker.terminate();
    },
  };
}
