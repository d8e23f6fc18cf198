/**
 * Oil of a vessel that ends in a compressor holds refrigerant (all of it as if in there): towards 0.22 p / psat(T) kg per
 * kg of oil, with a time constant of 120 s stirred and 480 s standing, longer in the cold where oil is thick: twice for
 * every 15 K under 22 degC [guess]. What it holds is part of the charge. Slow to leave: the tail of an evacuation.
 */
import { exp } from '../numerics/exp';
import { TRACE_KG_PER_M3 } from './march';
import type { NetworkCore } from './networkCore';
import { saturationPressureAt } from './saturationAt';

const HELD_PER_KG = 0.22;
const STIRRED_S = 120;
const STANDING_S = 480;
/** Above it oil counts as thin; ln 2 over 15 K. */
const THIN_K = 295.15;
const THICKENS_PER_K = 0.0462;
const STIRRING_KG_PER_S = 0.002;
const MOST_TAKEN = 0.02;

/** Share of its mass that oil holds when settled at refrigerant pressure `p` and saturation pressure `psat`. */
export function settledShare(p: number, psat: number): number {
  const ratio = p / psat;
  return HELD_PER_KG * (ratio < 1 ? ratio : 1);
}

export function stepOil(core: NetworkCore, vessel: number, dtS: number): void {
  const { numbers: n, plan, scratch } = core;
  const c = plan.firstCell[vessel] + plan.cellCount[vessel] - 1;
  const iso = plan.isobars[vessel];
  const p = n.pressure[vessel];
  const psat = saturationPressureAt(core.probe, p, n.temperature[c], core.mostPressurePa);
  const settled = n.extra[3][vessel] * settledShare(p, psat);
  const coldK = THIN_K - n.temperature[c];
  const thick = coldK > 0 ? exp(THICKENS_PER_K * coldK) : 1;
  const stirred = Math.abs(n.flow[c > plan.firstCell[vessel] ? c - 1 : c]) > STIRRING_KG_PER_S;
  const tau = thick * (stirred ? STIRRED_S : STANDING_S);
  let m = ((settled - n.dissolved[vessel]) * dtS) / tau;
  const most = MOST_TAKEN * Math.max(0, n.mass[c] - TRACE_KG_PER_M3 * plan.cellVolume[c]);
  if (m > most) m = most;
  const hv = Math.max(iso.vapourEnthalpyJPerKg, n.enthalpy[c]);
  const h = m > 0 || n.dissolved[vessel] <= 0 ? hv : n.dissolvedHeat[vessel] / n.dissolved[vessel];
  n.dissolved[vessel] += m;
  n.dissolvedHeat[vessel] += m * h;
  scratch.sourceMass[c] -= m;
  scratch.sourceHeat[c] -= m * h;
}
