/** Brings air, water, oil or sealant into a vessel from outside, as a hand does; negative takes it away. */
import { OIL, WATER } from './moveSpecies';
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { SPECIES, type Species } from './networkTypes';

/** kg that came (no more can be taken than there is). Booked as brought in. Carries no energy, like these species. */
export function bringIn(
  core: NetworkCore,
  vessel: number,
  species: Exclude<Species, 'refrigerant' | 'foreign'>,
  kg: number,
): number {
  const { numbers } = core;
  const s = SPECIES.indexOf(species);
  const held = numbers.extra[s - 1];
  const came = kg < -held[vessel] ? -held[vessel] : kg;
  held[vessel] += came;
  numbers.totals[TOTAL.broughtInKg + s] += came;
  numbers.totals[TOTAL.crossedKg + s] += Math.abs(came);
  if (s === WATER) {
    const { steam, adsorbed } = numbers;
    adsorbed[vessel] = Math.min(adsorbed[vessel], held[vessel]);
    steam[vessel] = Math.min(steam[vessel], held[vessel] - adsorbed[vessel]);
  }
  if (s === OIL) numbers.sump[vessel] = Math.min(numbers.sump[vessel], held[vessel]);
  return came;
}
