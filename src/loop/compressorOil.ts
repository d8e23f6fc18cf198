/**
 * Oil and the compressor. It throws out with the gas 3 % of it by mass when it is filled as it should be, less as it
 * empties, more when it is overfull; the low side's walls give it back as the gas drags it along:
 *
 *   thrown = 0.03 m f,  f = s up to 1, then s + 20 (s - 1),  s = oil in it / oil that belongs in it
 *   back   = oil on the walls m / (0.04 tau),   tau = 20 s on wet walls, 180 s once the gas is 15 kJ/kg superheated
 *
 * So a short charge dries the walls, they hold the oil, and the compressor runs on less of it: the trend of a trade study
 * (57 % less oil in it at 25 % short on an orifice car). The numbers are [guess]; 2 to 5 % is common practice, no source.
 * Sealant goes with the oil that is thrown, by its share of the low side's oil.
 */
import { move, OIL, SEALANT } from './moveSpecies';
import type { NetworkCore } from './networkCore';

const THROWN_SHARE = 0.03;
const THROWN_OVERFULL = 20;
const DRAGGING_KG_PER_S = 0.04;
const WET_S = 20;
const DRY_S = 180;
const DRY_J_PER_KG = 15000;

/** `massKg` went through the compressor of `low` to `high`. */
export function carryOil(core: NetworkCore, low: number, high: number, massKg: number): void {
  const { numbers: n, plan } = core;
  const belongs = plan.sumpOil[low];
  const oil = n.extra[OIL - 1][low];
  if (belongs <= 0 || oil <= 0) return;
  const sump = n.sump[low];
  const end = plan.firstCell[low] + plan.cellCount[low] - 1;
  const over =
    (n.enthalpy[end > plan.firstCell[low] ? end - 1 : end] - plan.isobars[low].vapourEnthalpyJPerKg) /
    DRY_J_PER_KG;
  const dry = over < 0 ? 0 : over > 1 ? 1 : over;
  const dragged = massKg / (DRAGGING_KG_PER_S * (WET_S + (DRY_S - WET_S) * dry));
  const back = (oil - sump) * (dragged < 1 ? dragged : 1);
  const s = sump / belongs;
  const asked = THROWN_SHARE * massKg * (s < 1 ? s : s + THROWN_OVERFULL * (s - 1));
  const thrown = asked < sump ? asked : sump;
  const sealant = n.extra[SEALANT - 1][low];
  if (sealant > 0) move(core, SEALANT, low, high, (sealant * thrown) / oil);
  n.sump[low] = sump - thrown;
  move(core, OIL, low, high, thrown);
  n.sump[low] += back;
}
