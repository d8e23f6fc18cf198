/**
 * What goes along with the refrigerant and the air that a link moves; every vessel is well mixed.
 *
 *   foreign fluid   with the refrigerant, by its share of it (it counts in its mass)
 *   water           as vapour with the air, by its share of the gas; the rest with the refrigerant, at most 2 %
 *   oil, sealant    with liquid, by kg on a kg of liquid, at most 0.3; with vapour only to the room, oil, 30 g a kg (mist)
 *
 * Through a compressor oil goes by its own law (compressorOil.ts). Nobody gives more than there is. All shares that are
 * not by mixing are [guess].
 */
import { carryOil } from './compressorOil';
import { FOREIGN, leftKg, move, moveSteam, OIL, SEALANT, WATER } from './moveSpecies';
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';

const MOST_DISSOLVED_WATER = 0.02;
const MOST_ON_LIQUID = 0.3;
const MIST_WITH_VAPOUR = 0.03;

/** From `giver` to `taker`: kg, none negative. `airKg` has water vapour in it. */
export function carry(
  core: NetworkCore,
  l: number,
  giver: number,
  taker: number,
  massKg: number,
  liquidKg: number,
  airKg: number,
): void {
  const { numbers: n, plan } = core;
  if (taker !== 0) core.massSource[taker] += massKg;
  if (giver === 0) {
    const ratio = n.totals[TOTAL.roomHumidityRatio];
    if (ratio > 0 && airKg > 0) moveSteam(core, giver, taker, (airKg * ratio) / (1 + ratio));
    return;
  }
  // one link after the other: what has come in this step is mixed with what was there
  const held = n.held[giver] + core.massSource[giver];
  core.massSource[giver] -= massKg;
  const foreign = n.extra[FOREIGN - 1][giver] + core.speciesSource[FOREIGN][giver];
  if (foreign > 0 && held > 0) {
    const share = foreign / held;
    move(core, FOREIGN, giver, taker, massKg * (share < 1 ? share : 1));
  }
  if (n.extra[WATER - 1][giver] + core.speciesSource[WATER][giver] > 0) {
    carryWater(core, giver, taker, massKg, airKg, held);
  }
  if (plan.linkSpecs[l]?.kind === 'compressor' && giver === core.links.fromVessel[l]) {
    carryOil(core, giver, taker, massKg);
    return;
  }
  const oil = core.speciesSource[OIL];
  const before = oil[giver];
  if (liquidKg > 0 && n.liquid[giver] > 0) {
    carryOnLiquid(core, OIL, giver, taker, liquidKg);
    carryOnLiquid(core, SEALANT, giver, taker, liquidKg);
  }
  if (taker !== 0) return;
  if (massKg > liquidKg) move(core, OIL, giver, taker, MIST_WITH_VAPOUR * (massKg - liquidKg));
  n.linkOil[l] += before - oil[giver];
}

function carryWater(
  core: NetworkCore,
  giver: number,
  taker: number,
  massKg: number,
  airKg: number,
  held: number,
): void {
  const { numbers: n } = core;
  const steam = n.steam[giver];
  if (steam > 0 && airKg > 0) moveSteam(core, giver, taker, (airKg * steam) / (steam + n.extra[0][giver]));
  const rest = leftKg(core, WATER, giver);
  if (rest <= 0 || held <= 0) return;
  const share = rest / held;
  move(core, WATER, giver, taker, massKg * (share < MOST_DISSOLVED_WATER ? share : MOST_DISSOLVED_WATER));
}

function carryOnLiquid(
  core: NetworkCore,
  species: number,
  giver: number,
  taker: number,
  liquidKg: number,
): void {
  const there = leftKg(core, species, giver);
  if (there <= 0) return;
  const share = there / core.numbers.liquid[giver];
  move(core, species, giver, taker, liquidKg * (share < MOST_ON_LIQUID ? share : MOST_ON_LIQUID));
}
