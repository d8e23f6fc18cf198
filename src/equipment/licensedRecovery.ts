/**
 * Recovery by someone licensed, who comes with a machine and a tank of their own and works on both ports at once: twenty
 * minutes with the hands of everybody else off the car. Speed and vacuum are those of a recovery machine, a little better
 * kept [guess]; minutes and price are common practice, no source.
 */
export const LICENSED_RECOVERY = {
  minutes: 20,
  /** In a currency of no country. */
  price: 90,
  speedM3PerS: 1.6e-4,
  ultimatePa: 6000,
  tankM3: 12e-3,
  tankWallJPerK: 4000,
  /** A fan cools it. */
  tankWPerK: 60,
} as const;
