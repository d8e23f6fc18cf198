/**
 * Paints when something changed, and goes on painting while something moves: every picture of the screen for what a hand
 * moves, about every second one for fans and belts. At rest it does nothing at all. Where a picture takes long, those in
 * which the page around it changes are left to that.
 */
import { pictureTimer } from './pictureTimer';

export interface PaintLoop {
  /** Asks for a new picture at once. */
  want(): void;
  /** Asks for a new picture as soon as one is due among things that turn. */
  wantSoon(): void;
  /** The page around the bay changes in the next picture: on a slow machine it has that one to itself. */
  leaveOne(): void;
  /** For good: what is still asked for, as by focus that leaves with the bay, is not painted. */
  stop(): void;
}

/** What moved: nothing, only what turns by itself, or something a hand has to do with. */
export type Motion = 'none' | 'turning' | 'handled';

/** Pictures a second while only fans and belts turn, and instruments change. */
const TURNING_FRAMES_PER_S = 40;
/** After a pause time does not jump by more than this. */
const LONGEST_STEP_S = 0.1;
/** From how long a picture takes on some are left, ms, and from how short on no more. */
const [SLOW_MS, SWIFT_MS] = [10, 7] as const;
/** What the last picture says of that. */
const WEIGHT = 0.2;
const PAUSE_MS = 250;
/** A picture that begins later than this after another is no more the next. */
const NEXT_MS = 100;

/**
 * `tick` lets time go on and says what moved; `render` puts the scene on the screen, once it is no more `isBusy` with the
 * last picture.
 */
export function createPaintLoop(
  tick: (seconds: number) => Motion,
  render: () => void,
  isBusy: () => boolean,
): PaintLoop {
  let wanted = false;
  let handled = false;
  let due = false;
  let request = 0;
  let isStopped = false;
  let lastMs = 0;
  /** How long pictures take the page, evened out, ms; painting itself is another's. */
  let takenMs = 0;
  let isSlow = false;
  /** In which picture the next one was asked for; none where it was not. */
  let leftAfterMs = Number.POSITIVE_INFINITY;
  const schedule = (): void => {
    if (request === 0 && !isStopped) request = requestAnimationFrame(onFrame);
  };
  const timer = pictureTimer((ms) => {
    takenMs += (ms - takenMs) * WEIGHT;
    isSlow = takenMs > (isSlow ? SWIFT_MS : SLOW_MS);
  });
  const onFrame = (nowMs: number): void => {
    request = 0;
    const seconds = Math.min(LONGEST_STEP_S, (nowMs - lastMs) / 1000);
    const isNext = nowMs > leftAfterMs && nowMs - leftAfterMs < NEXT_MS;
    const isOthers = isSlow && isNext && nowMs - lastMs < PAUSE_MS;
    if (nowMs > leftAfterMs) leftAfterMs = Number.POSITIVE_INFINITY;
    if (isOthers || (!wanted && !handled && seconds < 1 / TURNING_FRAMES_PER_S)) {
      schedule();
      return;
    }
    lastMs = nowMs;
    timer.begin();
    const motion = tick(seconds);
    handled = motion === 'handled';
    wanted ||= due || motion !== 'none';
    due = false;
    if (wanted && !isBusy()) {
      wanted = false;
      render();
      timer.count();
    }
    if (wanted || motion !== 'none') schedule();
  };
  return {
    want() {
      wanted = true;
      schedule();
    },
    wantSoon() {
      due = true;
      schedule();
    },
    leaveOne() {
      leftAfterMs = Number(document.timeline.currentTime);
    },
    stop() {
      isStopped = true;
      cancelAnimationFrame(request);
      timer.stop();
    },
  };
}
