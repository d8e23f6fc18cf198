/** The one step used in everything played, logged, proved or scored. */
export const STEP_S = 0.02;
