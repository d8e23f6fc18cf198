/**
 * Cylinder of dry nitrogen with a regulator. The model counts it as dry air: one ideal gas for both, and no water in it.
 * Volume, filling pressure and area are guesses after small workshop cylinders.
 */
export const NITROGEN = {
  volumeM3: 5e-3,
  fillPa: 10e6,
  wallJPerK: 6000,
  airWPerK: 3,
  regulatorCdaM2: 1.2e-6,
} as const;
