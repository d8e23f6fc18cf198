/**
 * Steps of a sixtieth of a second that a hose makes in a time. Never more than two at once: where a picture takes longer
 * than that the hose is late, and pictures do not get later by it.
 */
const STEPS_PER_S = 60;
const MOST = 2;

export const stepsIn = (seconds: number): number =>
  Math.min(MOST, Math.max(1, Math.round(seconds * STEPS_PER_S)));
