/** Paints when something changed, and goes on painting while something moves. At rest it does nothing at all. */
export interface PaintLoop {
  /** Asks for a new picture. */
  want(): void;
  stop(): void;
}

/** Pictures a second while something moves. */
const MOST_FRAMES_PER_S = 40;
/** After a pause time does not jump by more than this. */
const LONGEST_STEP_S = 0.1;

/** `tick` lets time go on and says whether anything moved; `render` puts the scene on the screen. */
export function createPaintLoop(tick: (seconds: number) => boolean, render: () => void): PaintLoop {
  let wanted = false;
  let request = 0;
  let last = 0;
  const schedule = (): void => {
    if (request === 0) request = requestAnimationFrame(onFrame);
  };
  const onFrame = (now: number): void => {
    request = 0;
    const seconds = Math.min(LONGEST_STEP_S, (now - last) / 1000);
    if (!wanted && seconds < 1 / MOST_FRAMES_PER_S) {
      schedule();
      return;
    }
    last = now;
    const moved = tick(seconds);
    if (moved || wanted) render();
    wanted = false;
    if (moved) schedule();
  };
  return {
    want() {
      wanted = true;
      schedule();
    },
    stop: () => cancelAnimationFrame(request),
  };
}
