/**
 * A vessel's water: liquid (on a wall, or dissolved in liquid refrigerant), vapour, or held by a desiccant.
 *
 *   vapour tends to a psat(T_wall),   a = 1 on a bare wall, else what is dissolved over what can be
 *
 * within a second where the pressure beside it is less than its own (it boils), slower by 0.3 s a kPa over that, at most
 * 30 s more: it has to find its way through other gas. Its heat (2.45 MJ/kg) comes out of the wall it lies on, so it cools
 * itself and holds the pressure at its own until it is gone; it is booked as heat. Dissolved in refrigerant it takes
 * hardly any: the share that counts is 20 kPa / (20 kPa + p). A desiccant takes up water in 200 s where refrigerant
 * streams, 2,000 s where it stands, and gives nothing back; common practice, no source. Times are [guess].
 */
import { waterSaturationPressurePa } from '../air/saturatedAir';
import { WATER } from './moveSpecies';
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { STEAM_TO_AIR } from './portDraw';
import { waterSolubilityMgPerKg } from './waterInRefrigerant';

const LATENT_J_PER_KG = 2.45e6;
const BOILING_S = 1;
const HINDERED_S_PER_PA = 0.3e-3;
const MOST_HINDERED_S = 30;
const HEAT_COUNTS_UNDER_PA = 20_000;
const TAKEN_UP_S = 200;
const TAKEN_UP_STANDING_S = 2000;
const STREAMING_KG_PER_S = 0.002;
const MG_PER_KG = 1e6;

export function stepWater(core: NetworkCore, vessel: number, dtS: number): void {
  const { numbers: n, plan, bodyHeat } = core;
  if (n.desiccant[vessel] > n.adsorbed[vessel]) adsorb(core, vessel, dtS);
  const free = freeWaterKg(core, vessel);
  const steam = n.steam[vessel];
  if (free <= 0 && steam <= 0) return;
  const settled = settledSteamKg(core, vessel);
  const beside = n.pressure[vessel] + n.extra[0][vessel] * n.airStiffness[vessel];
  const tau = BOILING_S + Math.min(MOST_HINDERED_S, HINDERED_S_PER_PA * beside);
  let m = ((settled - steam) * dtS) / (tau + dtS);
  if (m > free) m = free;
  n.steam[vessel] = steam + m;
  const heat = (m * LATENT_J_PER_KG * HEAT_COUNTS_UNDER_PA) / (HEAT_COUNTS_UNDER_PA + n.pressure[vessel]);
  bodyHeat[plan.waterCell[vessel]] -= heat;
  n.totals[TOTAL.heatInJ] -= heat;
  n.totals[TOTAL.turnedJ] += Math.abs(heat);
}

/** kg of water neither vapour nor in a desiccant. */
export function freeWaterKg(core: NetworkCore, vessel: number): number {
  const { numbers: n } = core;
  const free = n.extra[WATER - 1][vessel] - n.steam[vessel] - n.adsorbed[vessel];
  return free > 0 ? free : 0;
}

/** kg of vapour over the water of a vessel when it has come to rest. */
export function settledSteamKg(core: NetworkCore, vessel: number): number {
  const { numbers: n, plan } = core;
  const wallK = n.wall[plan.waterCell[vessel]];
  const liquid = n.liquid[vessel];
  let activity = 1;
  if (liquid > 0) {
    const dissolved = (MG_PER_KG * freeWaterKg(core, vessel)) / liquid;
    activity = Math.min(1, dissolved / waterSolubilityMgPerKg(core.refrigerant.id, wallK));
  }
  return (activity * waterSaturationPressurePa(wallK)) / (STEAM_TO_AIR * n.airStiffness[vessel]);
}

function adsorb(core: NetworkCore, vessel: number, dtS: number): void {
  const { numbers: n, plan } = core;
  const capacity = n.desiccant[vessel];
  const free = freeWaterKg(core, vessel);
  const streams = Math.abs(n.flow[plan.waterCell[vessel]]) > STREAMING_KG_PER_S;
  const tau = streams ? TAKEN_UP_S : TAKEN_UP_STANDING_S;
  const room = 1 - n.adsorbed[vessel] / capacity;
  const m = Math.min(((free + n.steam[vessel]) * room * dtS) / (tau + dtS), capacity - n.adsorbed[vessel]);
  n.adsorbed[vessel] += m;
  if (m > free) n.steam[vessel] = Math.max(0, n.steam[vessel] - (m - free));
}
