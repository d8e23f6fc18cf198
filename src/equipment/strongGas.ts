/**
 * Gases that have no business in a loop, and nothing between bottle and hose: air of the workshop's compressor, oxygen,
 * nitrogen without its regulator. The model counts them all as dry air. Volumes, pressures and the valve are guesses after
 * small workshop bottles.
 */
export const STRONG_GAS = {
  'shop-air': { volumeM3: 0.05, fillPa: 0.95e6 },
  oxygen: { volumeM3: 4e-3, fillPa: 10e6 },
  'bare-nitrogen': { volumeM3: 4e-3, fillPa: 10e6 },
} as const;
export type StrongGasId = keyof typeof STRONG_GAS;
export const STRONG_GAS_IDS = Object.keys(STRONG_GAS) as readonly StrongGasId[];
export const STRONG_GAS_VALVE_CDA_M2 = 0.15e-6;
export const STRONG_GAS_WALL_J_PER_K = 6000;
export const STRONG_GAS_AIR_W_PER_K = 3;
