/** Brings air, water, oil or sealant into a vessel from outside, as a hand does; negative takes it away. */
import { OIL, WATER } from './moveSpecies';
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { SPECIES, type Species } from './networkTypes';

/**
 * kg that came (no more can be taken than there is: of oil, on the vessel's walls or in the compressor's sump). Booked as
 * brought in. Carries no energy, like these species.
 */
export function bringIn(
  core: NetworkCore,
  vessel: number,
  species: Exclude<Species, 'refrigerant' | 'foreign'>,
  kg: number,
  oilAt: 'walls' | 'sump' = 'walls',
): number {
  const { numbers } = core;
  const s = SPECIES.indexOf(species);
  const held = numbers.extra[s - 1];
  const sump = s === OIL ? numbers.sump[vessel] : 0;
  const left = oilAt === 'sump' ? sump : Math.max(0, held[vessel] - sump);
  const came = kg < -left ? -left : kg;
  held[vessel] += came;
  numbers.totals[TOTAL.broughtInKg + s] += came;
  numbers.totals[TOTAL.crossedKg + s] += Math.abs(came);
  if (s === WATER) {
    const { steam, adsorbed } = numbers;
    adsorbed[vessel] = Math.min(adsorbed[vessel], held[vessel]);
    steam[vessel] = Math.min(steam[vessel], held[vessel] - adsorbed[vessel]);
  }
  if (oilAt === 'sump') numbers.sump[vessel] = sump + came;
  return came;
}
