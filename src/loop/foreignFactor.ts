/**
 * APPROXIMATE: what a second refrigerant does to the pressure, in one function. The mixture moves, boils and fills its
 * vessel as the loop's own fluid does; only its pressure is another, p (1 + factor):
 *
 *   with liquid      x (psat_f - psat_r) / psat_r,   x = (w / M_f) / (w / M_f + (1 - w) / M_r)      Raoult's law
 *   vapour alone     w (M_r / M_f - 1)                                                              ideal gases
 *
 * w is the foreign share by mass; between the two it goes over as the last twentieth of the mass evaporates. Real pairs
 * part from Raoult's line, some of them upwards by a tenth; glide and a gas of another composition are left out.
 */
import type { ForeignId } from './foreign';
import { FOREIGN_KG_PER_MOL, foreignSaturationPa } from './foreignFluid';

const WET_FROM = 0.05;
/** Only a guard, for liquid where no liquid can be. */
const MOST = 2;

/** `ownPa` and `ownK`: of the loop's own fluid at saturation. `liquidShare` by mass. */
export function foreignFactor(
  fluid: ForeignId,
  foreignShare: number,
  liquidShare: number,
  ownKgPerMol: number,
  ownPa: number,
  ownK: number,
): number {
  const lighter = ownKgPerMol / FOREIGN_KG_PER_MOL[fluid];
  const dry = foreignShare * (lighter - 1);
  if (liquidShare <= 0) return dry;
  const moles = foreignShare * lighter;
  const over = Math.min(MOST, foreignSaturationPa(fluid, ownK) / ownPa - 1);
  const raoult = (moles / (moles + 1 - foreignShare)) * over;
  if (liquidShare >= WET_FROM) return raoult;
  const u = liquidShare / WET_FROM;
  return dry + u * u * (3 - 2 * u) * (raoult - dry);
}
