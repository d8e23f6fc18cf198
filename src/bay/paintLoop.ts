/**
 * Paints when something changed, and goes on painting while something moves: every picture of the screen for what a hand
 * moves, about every second one for fans and belts. At rest it does nothing at all.
 */
export interface PaintLoop {
  /** Asks for a new picture at once. */
  want(): void;
  /** Asks for a new picture as soon as one is due among things that turn. */
  wantSoon(): void;
  stop(): void;
}

/** What moved: nothing, only what turns by itself, or something a hand has to do with. */
export type Motion = 'none' | 'turning' | 'handled';

/** Pictures a second while only fans and belts turn, and instruments change. */
const TURNING_FRAMES_PER_S = 40;
/** After a pause time does not jump by more than this. */
const LONGEST_STEP_S = 0.1;

/** `tick` lets time go on and says what moved; `render` puts the scene on the screen. */
export function createPaintLoop(tick: (seconds: number) => Motion, render: () => void): PaintLoop {
  let wanted = false;
  let handled = false;
  let due = false;
  let request = 0;
  let last = 0;
  const schedule = (): void => {
    if (request === 0) request = requestAnimationFrame(onFrame);
  };
  const onFrame = (now: number): void => {
    request = 0;
    const seconds = Math.min(LONGEST_STEP_S, (now - last) / 1000);
    if (!wanted && !handled && seconds < 1 / TURNING_FRAMES_PER_S) {
      schedule();
      return;
    }
    last = now;
    const motion = tick(seconds);
    handled = motion === 'handled';
    if (motion !== 'none' || wanted || due) render();
    wanted = false;
    due = false;
    if (motion !== 'none') schedule();
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
    stop: () => cancelAnimationFrame(request),
  };
}
