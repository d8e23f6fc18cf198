/**
 * What would leave a vessel at a port now. Heights are in the pot's own frame; tilting a pot moves the opening up or
 * down against the liquid: a can's valve is at height 1 upright, 0 upside down, and in the middle lying down.
 * Shaking throws liquid at an opening that is in vapour.
 */
import { cos, sin } from '../numerics/sine';
import { submerged, TRACE_KG_PER_M3 } from './march';
import type { NetworkNumbers } from './networkNumbers';
import type { NetworkPlan } from './networkPlan';

const RADIANS_PER_DEGREE = 0.017453292519943295;
const PORT_BLEND = 0.06;
/** Share of liquid, by mass, in what leaves a well shaken, half full pot through an opening in its vapour. */
const SHAKEN_CARRY_OVER = 0.75;
export const AIR_GAS_CONSTANT = 287.05;
/** Gas constant of water vapour over that of air. */
export const STEAM_TO_AIR = 1.6078;

/** Reused; filled by `drawAt`. */
export interface PortDraw {
  /** Of the refrigerant, J/kg. */
  enthalpyJPerKg: number;
  /** Of the whole flow, kg/m3, air included. */
  densityKgPerM3: number;
  /** kg of liquid and of air (water vapour included) in a kg of flow. */
  liquidShare: number;
  airShare: number;
  /** kg of the scarcer phase that is there to be taken, per share of it in the flow. */
  availableKg: number;
  vapourVolumeShare: number;
}

export function createDraw(): PortDraw {
  return {
    enthalpyJPerKg: 0,
    densityKgPerM3: 1,
    liquidShare: 0,
    airShare: 0,
    availableKg: 0,
    vapourVolumeShare: 1,
  };
}

/** Height of an opening above the lowest point of a tilted cylinder, as a share of its vertical extent. */
export function tiltedHeight(height: number, degrees: number, aspect: number): number {
  if (degrees === 0) return height;
  const c = cos(degrees * RADIANS_PER_DEGREE);
  const extent = Math.abs(c) + aspect * Math.abs(sin(degrees * RADIANS_PER_DEGREE));
  return 0.5 + ((height - 0.5) * c) / extent;
}

/** Fills `out` for an opening at `height` (bulk: negative) of cell `c` in `vessel`. */
export function drawAt(
  n: NetworkNumbers,
  plan: NetworkPlan,
  vessel: number,
  c: number,
  height: number,
  out: PortDraw,
): void {
  const iso = plan.isobars[vessel];
  const h = n.enthalpy[c];
  const hl = iso.liquidEnthalpyJPerKg;
  const hv = iso.vapourEnthalpyJPerKg;
  const airDensity = airDensityAt(n, vessel, n.temperature[c]);
  const spare = n.mass[c] - TRACE_KG_PER_M3 * plan.cellVolume[c];
  const mass = spare > 0 ? spare : 0;
  if (h <= hl || h >= hv) {
    const wet = h <= hl;
    out.enthalpyJPerKg = h;
    out.liquidShare = wet ? 1 : 0;
    // what is there, not the property at the least pressure: a vessel of air alone holds almost no refrigerant
    const volume = wet ? n.volume[c] : plan.cellVolume[c] / n.mass[c];
    out.airShare = wet ? 0 : (airDensity * volume) / (1 + airDensity * volume);
    out.densityKgPerM3 = 1 / volume + (wet ? 0 : airDensity);
    out.availableKg = mass;
    out.vapourVolumeShare = wet ? 0 : 1;
    return;
  }
  const vl = iso.liquidVolumeM3PerKg;
  const vv = iso.vapourVolumeM3PerKg;
  const x = (h - hl) / (hv - hl);
  const y = vapourShare(n, plan, vessel, c, height, x, 1 - (x * vv) / n.volume[c]);
  const gasVolume = y * vv;
  const volume = (1 - y) * vl + gasVolume;
  const airPerKg = gasVolume * airDensity;
  out.enthalpyJPerKg = hl + y * (hv - hl);
  out.liquidShare = (1 - y) / (1 + airPerKg);
  out.airShare = airPerKg / (1 + airPerKg);
  out.densityKgPerM3 = (1 + airPerKg) / volume;
  const fromVapour = y > 0 ? (mass * x) / y : mass;
  const fromLiquid = y < 1 ? (mass * (1 - x)) / (1 - y) : mass;
  out.availableKg = fromVapour < fromLiquid ? fromVapour : fromLiquid;
  out.vapourVolumeShare = gasVolume / volume;
}

/** kg/m3 of air and water vapour in a vessel's gas. */
export function airDensityAt(n: NetworkNumbers, vessel: number, temperatureK: number): number {
  const p = n.airPressure[vessel];
  if (p <= 0) return 0;
  const steam = n.steam[vessel];
  const asAir = p / (AIR_GAS_CONSTANT * temperatureK);
  return steam > 0 ? asAir / airGasOf(n, vessel) : asAir;
}

/** Gas constant of a vessel's air and water vapour together, over that of dry air. */
export function airGasOf(n: NetworkNumbers, vessel: number): number {
  const steam = n.steam[vessel];
  if (steam <= 0) return 1;
  const air = n.extra[0][vessel];
  return (air + STEAM_TO_AIR * steam) / (air + steam);
}

function vapourShare(
  n: NetworkNumbers,
  plan: NetworkPlan,
  vessel: number,
  c: number,
  height: number,
  x: number,
  level: number,
): number {
  if (height < 0) return x;
  const at = tiltedHeight(height, n.tilt[vessel], plan.aspect[c]);
  // keeps the ramp inside the pot, so an empty pot gives vapour and a full one liquid
  const inside = at < PORT_BLEND ? PORT_BLEND : at > 1 - PORT_BLEND ? 1 - PORT_BLEND : at;
  const wet = submerged(level, inside, PORT_BLEND);
  const splash = SHAKEN_CARRY_OVER * n.shaking[vessel] * (level < 0.2 ? level / 0.2 : 1);
  return (1 - wet) * (1 - splash);
}
