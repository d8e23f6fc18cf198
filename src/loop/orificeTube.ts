/**
 * Fixed orifice tube: a short tube at or near choked flow.
 *
 * Payne & O'Neal (2004), HVAC&R Research 10(1), 73-87, pi groups; coefficients as given alike by two open
 * implementations (the paper itself was not seen). m = A sqrt(rho_f pc) pi1, times a factor for a two-phase inlet.
 * Fitted for bores 1.09..1.94 mm and lengths 9.5..25.4 mm; a vehicle's 38 mm is outside.
 *
 * Ours, where the correlation ends [guess]: subcooling over 15 K (scaled with the root of the pressure drop), quality
 * over 0.08 (scaled with the root of density), no more than gas would pass, and less as the two pressures come level. A
 * bore over 1.94 mm (a tube too large, or none) passes no more than homogeneous flow, and is never shorter than 4.9 bores.
 */
import { ln } from '../numerics/ln';
import { homogeneousFlux } from './homogeneousFlow';
import type { MeteringInlet } from './meteringInlet';
import { seatPa } from './meteringInlet';

const MOST_SUBCOOLING_K = 15;
const MOST_QUALITY = 0.08;
const FLASH_SHARE = 0.6;
const GAS_COEFFICIENT = 0.62;
/** Downstream over upstream pressure above which flow begins to fall. */
const CHOKE_RATIO = 0.55;
/** Where the fit ends. */
const WIDEST_BORE_M = 1.94e-3;
const LEAST_LENGTH_OVER_BORE = 4.9;

/** kg/s through a tube of bore `boreM` and length `lengthM` with `openShare` of its area open. */
export function orificeTubeFlow(
  boreM: number,
  lengthM: number,
  openShare: number,
  inlet: MeteringInlet,
  criticalPa: number,
  criticalK: number,
): number {
  const drop = inlet.pressurePa - inlet.downstreamPa;
  if (drop <= 0 || openShare <= 0) return 0;
  const area = 0.7853981633974483 * boreM * boreM * openShare;
  const full = area * choked(boreM, lengthM, inlet, criticalPa, criticalK);
  const seat = seatPa(inlet.pressurePa);
  if (drop < seat) return (full * unchoking(inlet.pressurePa - seat, inlet.pressurePa) * drop) / seat;
  return full * unchoking(inlet.downstreamPa, inlet.pressurePa);
}

function unchoking(downstreamPa: number, upstreamPa: number): number {
  const ratio = downstreamPa / upstreamPa;
  if (ratio <= CHOKE_RATIO) return 1;
  const u = (ratio - CHOKE_RATIO) / (1 - CHOKE_RATIO);
  return Math.sqrt(1 - u * u);
}

/** kg/(s m2) with the outlet choked. */
function choked(
  boreM: number,
  lengthM: number,
  inlet: MeteringInlet,
  criticalPa: number,
  criticalK: number,
): number {
  const gas = GAS_COEFFICIENT * Math.sqrt(inlet.pressurePa / inlet.volumeM3PerKg);
  const lengthOverBore = Math.max(LEAST_LENGTH_OVER_BORE, lengthM / boreM);
  const flow =
    Math.sqrt(criticalPa / inlet.liquidM3PerKg) * pi1(inlet, lengthOverBore, criticalPa, criticalK);
  const wet = inlet.quality > 0 ? flow * twoPhase(inlet, lengthOverBore, criticalPa) : flow * deep(inlet);
  const passed = wet < gas ? Math.max(0, wet) : gas;
  return boreM > WIDEST_BORE_M ? Math.min(passed, homogeneousFlux(inlet, criticalPa, criticalK)) : passed;
}

function pi1(inlet: MeteringInlet, lengthOverBore: number, criticalPa: number, criticalK: number): number {
  const subcooling = inlet.subcoolingK < MOST_SUBCOOLING_K ? inlet.subcoolingK : MOST_SUBCOOLING_K;
  const share = inlet.subcoolingK > 0 ? subcooling / inlet.subcoolingK : 0;
  const pi3 = (share * (inlet.pressurePa - inlet.saturationPa)) / criticalPa;
  const pi6 = inlet.liquidM3PerKg / inlet.vapourM3PerKg;
  const pi9 = subcooling / criticalK;
  const above = 0.38811 + 11.427 * pi3 - 14.194 * pi9 + 1.0703 * pi6 - 0.091928 * ln(lengthOverBore);
  return above / (1 + 21.425 * pi3 - 581.95 * pi9 * pi9);
}

/** Factor for more subcooling than the correlation was fitted for. */
function deep(inlet: MeteringInlet): number {
  if (inlet.subcoolingK <= MOST_SUBCOOLING_K) return 1;
  const below = inlet.pressurePa - inlet.saturationPa;
  const at15 = (below * MOST_SUBCOOLING_K) / inlet.subcoolingK;
  const flash = (1 - FLASH_SHARE) * inlet.pressurePa;
  return Math.sqrt((flash + FLASH_SHARE * below) / (flash + FLASH_SHARE * at15));
}

function twoPhase(inlet: MeteringInlet, lengthOverBore: number, criticalPa: number): number {
  const x = inlet.quality < MOST_QUALITY ? inlet.quality : MOST_QUALITY;
  const vl = inlet.liquidM3PerKg;
  const vv = inlet.vapourM3PerKg;
  const mixed = vl + x * (vv - vl);
  const tp6 = vl / mixed;
  const nearness = ln((criticalPa - inlet.pressurePa) / criticalPa);
  const lnLd = ln(lengthOverBore);
  const lnTp6 = ln(tp6);
  const tp28 = inlet.pressurePa / criticalPa;
  const tp34 = (x / (1 - x)) * Math.sqrt(vv / vl);
  const above =
    1.1831 * tp6 -
    1.468 * tp6 * tp6 -
    0.15285 * lnTp6 * lnTp6 +
    (-14.639 + 9.8401) * nearness * nearness -
    0.019798 * lnLd * lnLd;
  const factor = above / (1 - 1.5348 * tp6 - 2.0533 * tp34 - 17.195 * tp28 * tp28 * tp28);
  const capped = factor < 1 ? (factor > 0 ? factor : 0) : 1;
  return inlet.quality <= MOST_QUALITY ? capped : capped * Math.sqrt(mixed / inlet.volumeM3PerKg);
}
