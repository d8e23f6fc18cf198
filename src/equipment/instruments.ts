/**
 * The instruments on the bench with their range, resolution, lag and spread. Ranges of the gauges follow common service
 * gauges (compound 1,000 kPa, high 3,500 kPa); class 1.6 of EN 837-1 gives the spread (half the class limit as one
 * standard deviation). Thermometer and scale figures are common practice, no source.
 */
import { PA_PER_MICRON } from '../units/pressure';
import type { InstrumentSpec } from './instrument';

const KPA = 1000;

/** Low-side gauge, gauge pressure in Pa: vacuum to 1,000 kPa. */
function compound(id: string): InstrumentSpec {
  return {
    id,
    minimum: -100 * KPA,
    maximum: 1000 * KPA,
    resolution: 2 * KPA,
    lagS: 0.4,
    offsetSpread: 6 * KPA,
  };
}

export const gaugeSpecs = {
  charging: compound('charging'),
  low: compound('low'),
  high: {
    id: 'high',
    minimum: 0,
    maximum: 3500 * KPA,
    resolution: 5 * KPA,
    lagS: 0.4,
    offsetSpread: 20 * KPA,
  },
} as const satisfies Record<string, InstrumentSpec>;

export type GaugeId = keyof typeof gaugeSpecs;

/** Probe in an air stream, K. */
export const airThermometerSpec: InstrumentSpec = {
  id: 'air',
  minimum: 233.15,
  maximum: 423.15,
  resolution: 0.1,
  lagS: 8,
  offsetSpread: 0.25,
};

/** Clamp on a pipe, K: slower, and touched by the air around it. */
export const lineThermometerSpec: InstrumentSpec = {
  id: 'line',
  minimum: 233.15,
  maximum: 423.15,
  resolution: 0.1,
  lagS: 5,
  offsetSpread: 0.5,
};

/** Share of the surrounding air in what a clamp on a pipe feels. Common practice, no source: clamps read a little off. */
export const CLAMP_AIR_SHARE = 0.04;

/** Platform scale, kg. */
export const scaleSpec: InstrumentSpec = {
  id: 'scale',
  minimum: 0,
  maximum: 50,
  resolution: 0.001,
  lagS: 0.3,
  offsetSpread: 0.0005,
};

/**
 * Vacuum gauge, absolute pressure in Pa where it sits: 0.1 to 25,000 micron, steps of 0.1 Pa (three quarters of a micron).
 * Its range is what such gauges print; lag and error are guesses.
 */
export const micronGaugeSpec: InstrumentSpec = {
  id: 'micron-gauge',
  minimum: 0.1 * PA_PER_MICRON,
  maximum: 25_000 * PA_PER_MICRON,
  resolution: 0.1,
  lagS: 1,
  offsetSpread: 0.7,
};

/** Scale under a tank, kg: coarser than the bench's. Error within the 30 g and 15 g of SAE J2788, from memory. */
export const tankScaleSpec = (id: string): InstrumentSpec => ({
  id,
  minimum: 0,
  maximum: 100,
  resolution: 0.005,
  lagS: 0.5,
  offsetSpread: 0.003,
});

/** Marked bottle that catches oil, m3: steps of a millilitre. */
export const oilBottleSpec: InstrumentSpec = {
  id: 'drained-oil',
  minimum: 0,
  maximum: 500e-6,
  resolution: 1e-6,
  lagS: 0.5,
  offsetSpread: 0.2e-6,
};
