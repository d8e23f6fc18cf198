/** Simulated time in whole steps of 20 ms: the only clock a session knows. */
export const STEPS_PER_SECOND = 50;
export const STEPS_PER_MINUTE = 3000;
