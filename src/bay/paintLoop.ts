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
  let last = 0;
  /** How long pictures take the page, evened out, ms; painting itself is another's. */
  let taken = 0;
  let isSlow = false;
  /** In which picture the next one was asked for; none where it was not. */
  let leftAfter = Number.POSITIVE_INFINITY;
  const schedule = (): void => {
    if (request === 0) request = requestAnimationFrame(onFrame);
  };
  const timer = pictureTimer((ms) => {
    taken += (ms - taken) * WEIGHT;
    isSlow = taken > (isSlow ? SWIFT_MS : SLOW_MS);
  });
  const onFrame = (now: number): void => {
    request = 0;
    const seconds = Math.min(LONGEST_STEP_S, (now - last) / 1000);
    const isOthers = isSlow && now > leftAfter && now - leftAfter < NEXT_MS && now - last < PAUSE_MS;
    if (now > leftAfter) leftAfter = Number.POSITIVE_INFINITY;
    if (isOthers || (!wanted && !handled && seconds < 1 / TURNING_FRAMES_PER_S)) {
      schedule();
      return;
    }
    last = now;
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
      leftAfter = Number(document.timeline.currentTime);
    },
    stop() {
      cancelAnimationFrame(request);
      timer.stop();
    },
  };
}
