/**
 * One vessel, one step, one trial pressure: refrigerant marches from cell to cell towards the end of the tree.
 *
 * In each cell: take in what arrives and what links bring, add V dp and the wall's heat, and send on what does not fit
 * (E = M v(p', h) - V). With too little, the cell is filled backwards from the next one. The amount left over at the
 * end of the tree, F(p'), is continuous and falls as p' rises; the pressure of the step is where F = 0.
 * Sums of M and of M h - p V change only by links and wall heat, whatever p' is: that is what conserves mass and energy.
 *
 * Outflow of a two-phase pipe cell: y = S x / (1 - x + S x), slip S after Zivi (1964), J. Heat Transfer 86, 247-252.
 */
import type { NetworkNumbers } from './networkNumbers';
import type { NetworkPlan } from './networkPlan';

/** Slopes dh/dT used where a cell has just left the dome, and as bounds on how far a wall can bring it: J/(kg K). */
const VAPOUR_HEAT = 950;
const LIQUID_HEAT = 1400;
/** Share of the next cell's contents that may be taken back in one step. */
const BACKFILL_SHARE = 0.9;
/** What every cell keeps, kg/m3: far under the thinnest vacuum, and enough to stay a number. */
export const TRACE_KG_PER_M3 = 3e-7;
/** A cell gives back pure vapour only if it holds this many times what is asked. */
const VAPOUR_TO_SPARE = 1.4;
/** Level, as a share of the pot, above which its bleed hole is covered. */
const FULL_BLEED_LEVEL = 0.03;
export const REFERENCE_PRESSURE_PA = 101325;

export interface MarchScratch {
  /** Brought by links in this step: kg and J. */
  readonly sourceMass: Float64Array;
  readonly sourceHeat: Float64Array;
  /** dt times refrigerant-to-wall conductance, J/K, and slip, both read at the start of the step. */
  readonly wallGain: Float64Array;
  readonly slip: Float64Array;
  readonly arrivingMass: Float64Array;
  readonly arrivingHeat: Float64Array;
  readonly newMass: Float64Array;
  readonly newHeat: Float64Array;
  readonly wallHeat: Float64Array;
  readonly sent: Float64Array;
  /** m3/kg of a single-phase cell that kept its enthalpy; else 0. */
  readonly volume: Float64Array;
}

/** kg (signed) left over at the end of the tree at refrigerant pressure `p`; results stand in `scratch`. */
export function march(
  n: NetworkNumbers,
  plan: NetworkPlan,
  s: MarchScratch,
  vessel: number,
  p: number,
): number {
  const { mass, enthalpy, temperature, temperatureSlope, wall } = n;
  const { next, isPot, cellVolume } = plan;
  const {
    sourceMass,
    sourceHeat,
    wallGain,
    arrivingMass,
    arrivingHeat,
    newMass,
    newHeat,
    wallHeat,
    sent,
    slip,
    volume,
  } = s;
  const iso = plan.isobars[vessel];
  if (iso.pressurePa !== p) iso.setPressurePa(p);
  const Ts = iso.saturationTemperatureK;
  const hl = iso.liquidEnthalpyJPerKg;
  const hv = iso.vapourEnthalpyJPerKg;
  const vl = iso.liquidVolumeM3PerKg;
  const vv = iso.vapourVolumeM3PerKg;
  const latent = hv - hl;
  const perLatent = 1 / latent;
  const swell = vv - vl;
  const p0 = n.pressure[vessel];
  const elastic = plan.elasticity[vessel];
  const stretch = 1 + elastic * (p - REFERENCE_PRESSURE_PA);
  const push = (p - p0) * (1 + elastic * (0.5 * (p + p0) - REFERENCE_PRESSURE_PA));
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  for (let c = first; c < end; c++) {
    arrivingMass[c] = 0;
    arrivingHeat[c] = 0;
  }
  let remainder = 0;
  for (let c = first; c < end; c++) {
    const M = mass[c] + sourceMass[c] + arrivingMass[c];
    let H = mass[c] * enthalpy[c] + sourceHeat[c] + arrivingHeat[c] + cellVolume[c] * push;
    const allLiquid = M * hl;
    const allVapour = M * hv;

    const gain = wallGain[c];
    let Q: number;
    if (H > allLiquid && H < allVapour) {
      const drive = wall[c] - Ts;
      Q = gain * drive;
      if (drive > 0) {
        const most = allVapour + M * VAPOUR_HEAT * drive - H;
        if (Q > most) Q = most;
      } else {
        const least = allLiquid + M * LIQUID_HEAT * drive - H;
        if (Q < least) Q = least;
      }
    } else {
      let slope = temperatureSlope[c];
      let offset = temperature[c] - slope * enthalpy[c];
      if (slope === 0) {
        const dry = H >= allVapour;
        slope = dry ? 1 / VAPOUR_HEAT : 1 / LIQUID_HEAT;
        offset = Ts - slope * (dry ? hv : hl);
      }
      Q = (gain * (M * (wall[c] - offset) - slope * H)) / (M + gain * slope);
    }
    wallHeat[c] = Q;
    H += Q;
    newHeat[c] = H;

    const V = cellVolume[c] * stretch;
    const wet = H > allLiquid && H < allVapour;
    /** kg of vapour, and m3 that all of it wants. */
    const X = (H - allLiquid) * perLatent;
    let wanted: number;
    if (wet) {
      wanted = M * vl + X * swell;
      volume[c] = 0;
    } else {
      newMass[c] = M;
      iso.volumeOf(newHeat, newMass, c, volume);
      wanted = M * volume[c];
    }
    const excess = wanted - V;
    const onward = next[c];
    if (onward < 0) {
      newMass[c] = M;
      sent[c] = sourceMass[c] < 0 ? -sourceMass[c] : 0;
      remainder = (excess * M) / wanted;
      continue;
    }
    let m: number;
    let heat: number;
    if (excess >= 0) {
      if (wet) {
        /** kg of vapour in what leaves. */
        let gas: number;
        if (isPot[c]) {
          const y = potOutlet(plan, c, (X * vv) / wanted);
          m = excess / (vl + y * swell);
          gas = m * y;
        } else {
          const S = slip[c];
          const streaming = S * X;
          const per = M - X + streaming;
          const share = excess / (vl * per + streaming * swell);
          m = share * per;
          gas = share * streaming;
          // one pass more with the slip of the mixture that stays
          if (m < 0.5 * M) {
            const stays = M - m;
            const dry = X - gas;
            const kept = dry > 0 ? (dry < stays ? dry : stays) : 0;
            const left = S * kept;
            const perLeft = stays - kept + left;
            const again = excess / (vl * perLeft + left * swell);
            m = again * perLeft;
            gas = again * left;
          }
        }
        if (gas > X) {
          m = M - V / vl;
          heat = H - (V / vl) * hl;
        } else if (m - gas > M - X) {
          m = M - V / vv;
          heat = H - (V / vv) * hv;
        } else heat = m * hl + gas * latent;
      } else {
        m = excess / volume[c];
        heat = (m / M) * H;
      }
    } else {
      volume[c] = 0;
      let spare = mass[onward] - TRACE_KG_PER_M3 * cellVolume[onward];
      if (sourceMass[onward] < 0) spare += sourceMass[onward];
      if (arrivingMass[onward] < 0) spare += arrivingMass[onward];
      const hd = enthalpy[onward];
      const xd = (hd - hl) * perLatent;
      m = excess / vv;
      let ho = hv;
      if (xd >= 1 || xd * spare < -VAPOUR_TO_SPARE * m) {
        ho = hd;
        const vd = xd >= 1 || xd <= 0 ? n.volume[onward] : vl + xd * swell;
        m = excess / vd;
      }
      const most = -BACKFILL_SHARE * (spare > 0 ? spare : 0);
      if (m < most) m = most;
      heat = m * ho;
    }
    newMass[c] = M - m;
    newHeat[c] = H - heat;
    sent[c] = m;
    arrivingMass[onward] += m;
    arrivingHeat[onward] += heat;
  }
  return remainder;
}

/** Vapour share of what leaves a pot whose vapour fills `gasShare` of it. */
function potOutlet(plan: NetworkPlan, c: number, gasShare: number): number {
  const level = 1 - gasShare;
  const liquid = submerged(level, plan.outletHeight[c], plan.outletBlend[c]);
  const bleed = plan.bleed[c] * (level < FULL_BLEED_LEVEL ? level / FULL_BLEED_LEVEL : 1);
  return (1 - liquid) * (1 - bleed);
}

/** 0 where an opening at `height` is in vapour, 1 where it is under liquid, a smooth ramp of two `blend` between. */
export function submerged(level: number, height: number, blend: number): number {
  const u = (level - height) / (2 * blend) + 0.5;
  return u <= 0 ? 0 : u >= 1 ? 1 : u * u * (3 - 2 * u);
}
