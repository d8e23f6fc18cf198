/**
 * The service hoses: each is a small vessel with a coupler at the car's end and, for the charging hose and the utility
 * hose of the gauge set, a place for a can's tap at the other. Bore 4.8 mm; lengths as usual in service (SAE J2196
 * hoses are 0.9 to 1.8 m). Where a tool or tap screws on, a shut-off within 30 cm of the end (SAE J2196, from memory) shuts
 * itself as it comes off: the hose keeps what it holds. The charging hose has the low-side coupler only, which is what
 * keeps it off the high side.
 */
import type { Bore } from '../loop/networkTypes';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import { type FittingId, fittingOf } from './fittings';
import type { GaugeId } from './instruments';

export type HoseId = 'charging' | 'gauge-low' | 'gauge-high' | 'utility';

export interface HoseSpec {
  readonly id: HoseId;
  /** Coupler at the car's end by the refrigerant standard of the set; none on the utility hose. */
  readonly coupler: FittingId | null;
  readonly lengthM: number;
  readonly gauge: GaugeId | null;
  /** A can's tap screws on here. */
  readonly takesCan: boolean;
}

const BORE_M = 0.0048;
const QUARTER_PI = 0.7853981633974483;

export const hoseSpecs: Readonly<Record<HoseId, HoseSpec>> = {
  charging: { id: 'charging', coupler: 'r134a-13', lengthM: 0.6, gauge: 'charging', takesCan: true },
  'gauge-low': { id: 'gauge-low', coupler: 'r134a-13', lengthM: 1.5, gauge: 'low', takesCan: false },
  'gauge-high': { id: 'gauge-high', coupler: 'r134a-16', lengthM: 1.5, gauge: 'high', takesCan: false },
  utility: { id: 'utility', coupler: null, lengthM: 1.5, gauge: null, takesCan: true },
};

/** A hose of the set made for a refrigerant: the couplers are that one's, the rest is the same. */
export function hoseFor(id: HoseId, refrigerant: RefrigerantId): HoseSpec {
  const spec = hoseSpecs[id];
  if (spec.coupler === null) return spec;
  return { ...spec, coupler: fittingOf(refrigerant, spec.gauge === 'high' ? 'high' : 'low') };
}

export function hoseVolumeM3(spec: HoseSpec): number {
  return QUARTER_PI * BORE_M * BORE_M * spec.lengthM;
}

/** The hose's own length, which slows gas under vacuum. */
export const boreOf = ({ lengthM }: HoseSpec): Bore => ({ diameterM: BORE_M, lengthM });

/** Depressed port core behind a coupler, flow area times discharge coefficient. Common practice, no source. */
export const CORE_CDA_M2 = 2.2e-6;
/** Manifold hand valve, fully open. Common practice, no source. */
export const MANIFOLD_CDA_M2 = 3.0e-6;
/** Hose end let go with pressure in it, or cracked to purge. Common practice, no source. */
export const OPEN_END_CDA_M2 = 8.0e-6;
export const PURGE_CDA_M2 = 0.15e-6;
