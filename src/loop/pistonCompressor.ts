/**
 * Piston compressor, quasi-steady.
 *
 *   m = N Vd eta_v / v_s,   eta_v = (1 + C - C r^(1/1.1)) (eta_0 - 0.045 (krpm - 1.5))     clearance theory, textbook
 *   h_d = h_s + (h_is - h_s) / eta_is,   eta_is = eta_1 - 0.018 (r - 3) - 0.03 (krpm - 1.5), kept in 0.35..0.75
 *
 * Trends as Darr & Crawford (1992), ACRC TR-14: both efficiencies fall with speed, eta_v with pressure ratio; the
 * constants are [guess]. Suction ports lose 1.6e8 m^2 v Pa [guess]. Liquid taken in boils only after the cylinder, so
 * its work is no less than that of the vapour alone, and is counted: liquid cannot be squeezed.
 */
import { exp } from '../numerics/exp';
import { pow } from '../numerics/pow';
import type { Isobar } from '../refrigerant/refrigerant';

const SUCTION_LOSS = 1.6e8;
const POLYTROPIC_INVERSE = 1 / 1.1;
const SPEED_LOSS_PER_KRPM = 0.045;
const HEAT_LOSS_PER_KRPM = 0.03;
const HEAT_LOSS_PER_RATIO = 0.018;
/** Most liquid it will draw in, kg per revolution: 30 g/s at 25 rev/s. */
const MOST_LIQUID_PER_REV = 0.0012;
/** Discharge gas to the compressor's body, W/K. */
const BODY_WPERK = 16;
/** 0.3596 + 1.1072 s - 0.4025 s^2 (Jabardo et al. 2002, second-hand) over its value at a full stroke. */
const STROKE_FILLING_0 = 0.3379;
const STROKE_FILLING_1 = 1.0403;
const STROKE_FILLING_2 = 0.3782;
const AIR_HEAT = 1005;
const AIR_EXPONENT = 0.2857;

/** Reused; what goes in is set by the caller, what comes out is below it. */
export interface CompressorPoint {
  suctionPa: number;
  dischargePa: number;
  suctionEnthalpyJPerKg: number;
  suctionDensityKgPerM3: number;
  suctionTemperatureK: number;
  liquidShare: number;
  airShare: number;
  bodyTemperatureK: number;
  revPerS: number;
  /** Of the full stroke. */
  strokeShare: number;
  /** kg/s, air included, and of that the liquid. */
  flowKgPerS: number;
  liquidKgPerS: number;
  dischargeEnthalpyJPerKg: number;
  /** Shaft work given to the gas, and heat from the gas to the body, W. */
  gasWorkW: number;
  bodyHeatW: number;
}

export function createCompressorPoint(): CompressorPoint {
  return {
    suctionPa: 0,
    dischargePa: 0,
    suctionEnthalpyJPerKg: 0,
    suctionDensityKgPerM3: 1,
    suctionTemperatureK: 300,
    liquidShare: 0,
    airShare: 0,
    bodyTemperatureK: 300,
    revPerS: 0,
    strokeShare: 1,
    flowKgPerS: 0,
    liquidKgPerS: 0,
    dischargeEnthalpyJPerKg: 0,
    gasWorkW: 0,
    bodyHeatW: 0,
  };
}

export interface CompressorSize {
  readonly displacementM3: number;
  readonly clearance: number;
  readonly volumetricEfficiency: number;
  readonly isentropicEfficiency: number;
}

/** Works out the lower half of `at`. `health`: share of the healthy pumping. `mostTemperatureK`: of what is given out. */
export function compress(
  size: CompressorSize,
  health: number,
  at: CompressorPoint,
  suction: Isobar,
  discharge: Isobar,
  mostTemperatureK: number,
): void {
  at.flowKgPerS = at.liquidKgPerS = at.gasWorkW = at.bodyHeatW = 0;
  at.dischargeEnthalpyJPerKg = at.suctionEnthalpyJPerKg;
  if (at.revPerS <= 0 || at.strokeShare <= 0 || at.suctionPa < 5) return;
  takeIn(size, health, at);
  if (at.flowKgPerS <= 1e-12) return;
  const work = specificWork(size, at, suction, discharge);
  giveOut(at, work, discharge, mostTemperatureK);
}

function takeIn(size: CompressorSize, health: number, at: CompressorPoint): void {
  const krpmOver = at.revPerS * 0.06 - 1.5;
  const swept = at.revPerS * size.displacementM3 * at.strokeShare * strokeFilling(at.strokeShare);
  const first = swept * size.volumetricEfficiency * at.suctionDensityKgPerM3;
  let lossPa = (SUCTION_LOSS * first * first) / at.suctionDensityKgPerM3;
  if (lossPa > 0.4 * at.suctionPa) lossPa = 0.4 * at.suctionPa;
  const ratio = Math.max(1, at.dischargePa / (at.suctionPa - lossPa));
  const clearance = 1 + size.clearance - size.clearance * pow(ratio, POLYTROPIC_INVERSE);
  const speed = Math.max(0.3, size.volumetricEfficiency - SPEED_LOSS_PER_KRPM * krpmOver);
  const filled = Math.max(0, clearance) * speed * health * (1 - lossPa / at.suctionPa);
  const dry = 1 - at.liquidShare;
  // density is of the mixture; liquid takes no room, so the vapour is what fills the cylinder
  const vapour = swept * filled * at.suctionDensityKgPerM3;
  const liquid = dry > 0 ? (vapour * at.liquidShare) / dry : MOST_LIQUID_PER_REV * at.revPerS;
  at.liquidKgPerS = Math.min(liquid, MOST_LIQUID_PER_REV * at.revPerS);
  at.flowKgPerS = vapour + at.liquidKgPerS;
}

/** How much worse a part stroke fills than a full one. */
function strokeFilling(share: number): number {
  return STROKE_FILLING_0 + (STROKE_FILLING_1 - STROKE_FILLING_2 * share) * share;
}

/** J per kg of refrigerant taken in. */
function specificWork(size: CompressorSize, at: CompressorPoint, suction: Isobar, discharge: Isobar): number {
  const ratio = Math.max(1, at.dischargePa / at.suctionPa);
  const krpmOver = at.revPerS * 0.06 - 1.5;
  const raw = size.isentropicEfficiency - HEAT_LOSS_PER_RATIO * (ratio - 3) - HEAT_LOSS_PER_KRPM * krpmOver;
  const efficiency = raw < 0.35 ? 0.35 : raw > 0.75 ? 0.75 : raw;
  const hv = suction.vapourEnthalpyJPerKg;
  const dry = Math.max(at.suctionEnthalpyJPerKg, hv);
  const ideal = discharge.enthalpyFromEntropyJPerKg(suction.entropyJPerKgK(dry)) - dry;
  return (Math.max(0, ideal) / efficiency) * (at.flowKgPerS > 0 ? 1 - at.liquidKgPerS / at.flowKgPerS : 1);
}

function giveOut(at: CompressorPoint, work: number, discharge: Isobar, mostTemperatureK: number): void {
  const refrigerant = at.flowKgPerS * (1 - at.airShare);
  const ratio = Math.max(1, at.dischargePa / at.suctionPa);
  const air =
    at.airShare > 1e-6
      ? (at.flowKgPerS * at.airShare * AIR_HEAT * at.suctionTemperatureK * (pow(ratio, AIR_EXPONENT) - 1)) /
        0.6
      : 0;
  at.gasWorkW = refrigerant * work + air;
  at.bodyHeatW = air;
  if (refrigerant < 1e-9) {
    at.bodyHeatW += refrigerant * work;
    return;
  }
  let h = at.suctionEnthalpyJPerKg + work;
  const t = discharge.temperatureK(h);
  const slope = discharge.temperatureSlope(h);
  const heatRate = refrigerant / (slope > 0 ? slope : 1e-3);
  const passed = heatRate * (1 - exp(-BODY_WPERK / heatRate)) * (t - at.bodyTemperatureK);
  h -= passed / refrigerant;
  at.bodyHeatW += passed;
  // gas that was colder before it warmed the body needs no asking
  if (t > mostTemperatureK || passed < 0) {
    const most = discharge.enthalpyFromTemperatureJPerKg(mostTemperatureK);
    if (h > most) {
      at.bodyHeatW += refrigerant * (h - most);
      h = most;
    }
  }
  at.dischargeEnthalpyJPerKg = h;
}
