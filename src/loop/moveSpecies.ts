/** Moves kg of a species from one vessel to another, or to or from the room, and books it. */
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';

/** Numbers of the species in `SPECIES`. */
export const FOREIGN = 2;
export const WATER = 3;
export const OIL = 4;
export const SEALANT = 5;

/** Water vapour that has been booked as air. */
export function moveSteam(core: NetworkCore, giver: number, taker: number, kg: number): void {
  const { totals } = core.numbers;
  if (giver === 0) totals[TOTAL.ventedKg + 1] += kg;
  else {
    core.airSource[giver] += kg;
    core.steamSource[giver] -= kg;
  }
  if (taker === 0) totals[TOTAL.ventedKg + 1] -= kg;
  else {
    core.airSource[taker] -= kg;
    core.steamSource[taker] += kg;
  }
  shift(core, WATER, giver, taker, kg);
}

/** kg of a species that may still go with a flow: not what a desiccant or a compressor holds, nor water vapour. */
export function leftKg(core: NetworkCore, species: number, giver: number): number {
  const { numbers: n, steamSource } = core;
  const left = n.extra[species - 1][giver] + core.speciesSource[species][giver];
  if (species === OIL) return left - n.sump[giver];
  if (species !== WATER) return left;
  const steam = n.steam[giver] + steamSource[giver];
  return left - n.adsorbed[giver] - (steam > 0 ? steam : 0);
}

/** Moves `kg` of a species, at most what is left of it. */
export function move(core: NetworkCore, species: number, giver: number, taker: number, kg: number): void {
  const left = leftKg(core, species, giver);
  const m = kg < left ? kg : left;
  if (m > 0) shift(core, species, giver, taker, m);
}

function shift(core: NetworkCore, species: number, giver: number, taker: number, kg: number): void {
  const { totals } = core.numbers;
  if (giver === 0) {
    totals[TOTAL.ventedKg + species] -= kg;
    totals[TOTAL.crossedKg + species] += kg;
  } else core.speciesSource[species][giver] -= kg;
  if (taker === 0) {
    totals[TOTAL.ventedKg + species] += kg;
    totals[TOTAL.crossedKg + species] += kg;
    // the refrigerant's mass was booked with the foreign fluid in it
    if (species === FOREIGN) totals[TOTAL.ventedKg] -= kg;
  } else core.speciesSource[species][taker] += kg;
}
