/** Sums and remembered values of the executive, in one small array beside the network's numbers. */
export const TALLY = {
  step: 0,
  /** Refrigerant that went through couplers into the loop, less what came back, kg. */
  intoLoopKg: 1,
  highestGaugePa: 2,
  trips: 3,
  clutchIn: 4,
  highSwitch: 5,
  reliefOpen: 6,
  /** Liquid to the compressor that has been told as an event, kg. */
  sluggedToldKg: 7,
  /** First of the steps at which the clutch last came in, a ring. */
  clutchRing: 8,
} as const;
export const CLUTCH_RING = 32;
export const TALLY_COUNT = TALLY.clutchRing + CLUTCH_RING + 1;
/** Where the next engagement goes. */
export const CLUTCH_RING_AT = TALLY.clutchRing + CLUTCH_RING;
