/**
 * Refrigerant identifier: takes gas from a port through a hose of its own, lets it flow through a small cell into the
 * room, and after its sampling time shows the shares by mass of what stands in the cell. Below its threshold it shows
 * none. Time and form as usual for such devices, common practice; volumes, areas, threshold and error are guesses.
 */
import type { InstrumentSpec } from './instrument';

/** What it can name, in the order it shows them. */
export const NAMED_GASES = ['R-134a', 'R-12', 'R-1234yf', 'hydrocarbon', 'air'] as const;

export const IDENTIFIER = {
  cellM3: 15e-6,
  wallJPerK: 40,
  airWPerK: 0.3,
  inletCdaM2: 0.2e-6,
  outletCdaM2: 0.015e-6,
  sampleS: 75,
  /** Over the air outside, Pa: less does not flow through. */
  leastPa: 20_000,
  threshold: 0.01,
} as const;

/** One of its five figures, a share by mass. */
export const shareSpec = (id: string): InstrumentSpec => ({
  id,
  minimum: 0,
  maximum: 1,
  resolution: 0.005,
  lagS: 0,
  offsetSpread: 0.001,
});
