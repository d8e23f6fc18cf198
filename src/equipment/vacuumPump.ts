/**
 * Rotary vacuum pump: speed (1 - ultimate / p) of whatever gas is at its inlet, blown out into the room. One that stands
 * is no valve: air creeps back through it. Speed as of the 1.7 L/s of small service pumps, ultimate 5 Pa, common practice;
 * the way back is a guess.
 */
export const VACUUM_PUMP = {
  speedM3PerS: 1.7e-3,
  ultimatePa: 5,
  /** Area times discharge coefficient of the way back through a pump that stands. */
  backCdaM2: 2e-10,
  /** Refrigerant blown out in one run that is told, kg. */
  toldKg: 0.005,
} as const;
