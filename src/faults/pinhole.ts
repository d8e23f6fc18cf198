/** Discharge coefficient times area of a round hole, m2; 0.7 of a sharp edge [guess]. */
const DISCHARGE_COEFFICIENT = 0.7;
const QUARTER_PI = 0.7853981633974483;

export const pinhole = (diameterM: number): number =>
  DISCHARGE_COEFFICIENT * QUARTER_PI * diameterM * diameterM;
