/**
 * Recovery machine with its own tank on a scale. A warmed pot at its inlet parts oil from gas; a piston pump takes gas from
 * the pot into the tank, whose wall a fan cools while it runs. It stops by itself at its vacuum switch or when the tank is
 * four fifths full of liquid.
 *
 * That at least 95 % of a charge comes out in 30 min at 21 to 24 degC is SAE J2788 from memory (a test holds it). Tanks
 * are filled to 80 % at most: common practice. Every other figure is a guess, sized after machines that move about a
 * quarter of a kilogram of vapour a minute.
 */
const MM_OF_MERCURY_PA = 101_325 / 760;

export const RECOVERY = {
  /** Displacement times speed, and the pressure at which its clearance leaves it nothing to take [guess]. */
  speedM3PerS: 1.6e-4,
  ultimatePa: 12_000,
  /** Its switch: so far below the air outside it goes off, after this long [guess]: 510 mm of mercury. */
  stopsBelowAirPa: 510 * MM_OF_MERCURY_PA,
  stopsAfterS: 10,
  inletCdaM2: 3.5e-6,
  separatorM3: 0.8e-3,
  separatorWallJPerK: 1500,
  /** Warmed by what it compresses: temperature and conductance while it runs [guess]. */
  warmK: 323.15,
  warmWPerK: 12,
  stillWPerK: 1,
} as const;

export const RECOVERY_TANK = {
  volumeM3: 12e-3,
  wallJPerK: 4000,
  tareKg: 6.4,
  /** Clean refrigerant of the same kind that is in it at the start [guess]. */
  heldKg: 1.5,
  stillWPerK: 4,
  fannedWPerK: 60,
  mostLiquidShare: 0.8,
  /** Shares by mass from which the tank counts as contaminated [guess]: 0.1 % of air is 15 to 25 kPa over the line. */
  contaminatedShare: { air: 0.001, foreign: 0.005 },
} as const;
