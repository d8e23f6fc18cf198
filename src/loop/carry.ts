/**
 * What goes along with the refrigerant and the air that a link moves; every vessel is well mixed.
 *
 *   foreign fluid   with the refrigerant, by its share of it (it counts in its mass)
 *   water           as vapour with the air, by its share of the gas; the rest with the refrigerant, at most 2 %
 *   oil, sealant    with liquid, by kg on a kg of liquid, at most 0.3; never with vapour
 *
 * Through a compressor oil goes by its own law (compressorOil.ts). Nobody gives more than there is. All shares that are
 * not by mixing are [guess].
 */
import { carryOil } from './compressorOil';
import { FOREIGN, move, moveSteam, OIL, SEALANT, WATER } from './moveSpecies';
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';

const MOST_DISSOLVED_WATER = 0.02;
const MOST_ON_LIQUID = 0.3;

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
  if (giver === 0) {
    const ratio = n.totals[TOTAL.roomHumidityRatio];
    if (ratio > 0 && airKg > 0) moveSteam(core, giver, taker, (airKg * ratio) / (1 + ratio));
    return;
  }
  const held = n.held[giver];
  const foreign = n.extra[FOREIGN - 1][giver];
  if (foreign > 0 && held > 0) {
    const share = foreign / held;
    move(core, FOREIGN, giver, taker, massKg * (share < 1 ? share : 1), foreign);
  }
  if (n.extra[WATER - 1][giver] > 0) carryWater(core, giver, taker, massKg, airKg);
  if (plan.linkSpecs[l]?.kind === 'compressor' && giver === core.links.fromVessel[l]) {
    carryOil(core, giver, taker, massKg);
    return;
  }
  const liquid = n.liquid[giver];
  if (liquidKg <= 0 || liquid <= 0) return;
  carryOnLiquid(core, OIL, giver, taker, liquidKg, n.extra[OIL - 1][giver] - n.sump[giver]);
  carryOnLiquid(core, SEALANT, giver, taker, liquidKg, n.extra[SEALANT - 1][giver]);
}

function carryWater(core: NetworkCore, giver: number, taker: number, massKg: number, airKg: number): void {
  const { numbers: n } = core;
  const steam = n.steam[giver];
  if (steam > 0 && airKg > 0) moveSteam(core, giver, taker, (airKg * steam) / (steam + n.extra[0][giver]));
  const rest = n.extra[WATER - 1][giver] - steam - n.adsorbed[giver];
  const held = n.held[giver];
  if (rest <= 0 || held <= 0) return;
  const share = rest / held;
  move(
    core,
    WATER,
    giver,
    taker,
    massKg * (share < MOST_DISSOLVED_WATER ? share : MOST_DISSOLVED_WATER),
    rest,
  );
}

function carryOnLiquid(
  core: NetworkCore,
  species: number,
  giver: number,
  taker: number,
  liquidKg: number,
  there: number,
): void {
  if (there <= 0) return;
  const share = there / core.numbers.liquid[giver];
  move(core, species, giver, taker, liquidKg * (share < MOST_ON_LIQUID ? share : MOST_ON_LIQUID), there);
}
