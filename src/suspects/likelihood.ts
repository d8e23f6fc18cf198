/**
 * How likely an observation is under one ghost, and under a cause.
 *
 *   reading:  normal about the ghost's value, variance = fixed error^2 + step^2/12 + spread^2
 *   look:     right, but for one look in twenty
 *   cause:    mean of its ghosts' likelihoods
 *
 * `spread` stands for everything the ensemble does not hold: severities between its own, the phase of a clutch that
 * cycles, a car that differs from its data. It is one figure, 1.5 K: as a temperature for thermometers, and as the
 * pressure that belongs to 1.5 K on a saturation line, about 3 % a kelvin for the refrigerants here (R-134a 2.9 %/K
 * between 0 and 50 degC), so 4.5 % of the absolute pressure. Printed charts allow a sound car some 19 % either way
 * between cars; this is one car against itself. For the scale 5 g: a can that empties a little faster. Estimates, no
 * source. For a vacuum gauge half of what it would show: a pump and a hose are never quite the same; for an identifier
 * one hundredth; for oil 5 mL. Estimates too. Zeroing a gauge takes its fixed error off and leaves the step it was read to.
 */
import { exp } from '../numerics/exp';
import { ln } from '../numerics/ln';
import { CHANNELS } from '../plant/panel';
import type { Ghost } from './ghost';
import type { Observation, Reading } from './observation';

const SPREAD_K = 1.5;
const SPREAD_OF_PRESSURE = 0.045;
const SPREAD_KG = 0.005;
const SPREAD_OF_VACUUM = 0.5;
const SPREAD_OF_SHARE = 0.01;
const SPREAD_M3 = 5e-6;
const MISTAKEN = 0.05;
/** For a ghost that has nothing to read where the person read something: as far off as ten spreads. */
const NOTHING_THERE = -50;
const STEP_SHARE = 1 / 12;
const HALF_LN_TWO_PI = 0.9189385332046727;

/** Logarithm of the likelihood (a density in 1/SI unit for a reading) of `seen`, where the ghost would show `wouldShow`. */
export function logLikelihood(ghost: Ghost, seen: Observation, wouldShow: number): number {
  if (Number.isNaN(wouldShow)) return NOTHING_THERE;
  if (seen.kind === 'look') return ln(seen.value === wouldShow ? 1 - MISTAKEN : MISTAKEN);
  const spread = Math.sqrt(variance(ghost, seen, wouldShow));
  const off = (seen.value - wouldShow) / spread;
  return -0.5 * off * off - ln(spread) - HALF_LN_TWO_PI;
}

/** SI unit squared. */
export function variance({ parts }: Ghost, seen: Reading, wouldShow: number): number {
  const { resolution, offsetSpread } = parts.panel.instruments[CHANNELS.indexOf(seen.instrument)];
  const step = resolution * resolution * STEP_SHARE;
  const fixed = seen.zeroed ? step : offsetSpread * offsetSpread;
  const spread = modelSpread(seen.unit, wouldShow, parts.options.weather.pressurePa);
  return fixed + step + spread * spread;
}

function modelSpread(unit: string, wouldShow: number, atmospherePa: number): number {
  switch (unit) {
    case 'Pa':
      return SPREAD_OF_PRESSURE * (wouldShow + atmospherePa);
    case 'Pa abs':
      return SPREAD_OF_VACUUM * wouldShow;
    case 'share':
      return SPREAD_OF_SHARE;
    case 'm3':
      return SPREAD_M3;
    default:
      return unit === 'kg' ? SPREAD_KG : SPREAD_K;
  }
}

/** ln of the mean of e^x, without leaving the range of numbers. */
export function logMean(logs: readonly number[]): number {
  return logSum(logs) - ln(logs.length);
}

export function logSum(logs: readonly number[]): number {
  const most = Math.max(...logs);
  if (most === Number.NEGATIVE_INFINITY) return most;
  return most + ln(logs.reduce((sum, log) => sum + exp(log - most), 0));
}
