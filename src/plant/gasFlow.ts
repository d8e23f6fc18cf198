/**
 * Gas that comes out at a place, m3/s at the room's pressure: refrigerant as the network let it out, and air or nitrogen
 * by the law of the opening, weighed by its share of the pressure. A mole of any gas has the same room.
 */
import { FOREIGN_KG_PER_MOL } from '../loop/foreignFluid';
import { valveFlow } from '../loop/valveFlow';
import type { PlantParts } from './assemblePlant';
import { AIR_J_PER_KG_K } from './benchVessels';
import { leakFlowKgPerS } from './leakFlow';

const GAS_J_PER_MOL_K = 8.314462618;

export function gasFlowM3PerS(parts: PlantParts, place: string): number {
  const { network } = parts.car;
  const link = network.linkNamed(`leak:${place}`);
  const spec = network.structure().links.find(({ slot }) => slot === link)?.spec;
  if (spec?.kind !== 'valve' || isSealed(parts, place)) return 0;
  const { vessel } = spec.from;
  const room = parts.options.weather;
  const inside = network.pressurePa(vessel);
  const airShare = network.airPressurePa(vessel) / inside;
  const rho = inside / (AIR_J_PER_KG_K * room.temperatureK);
  const airKg = airShare * valveFlow(spec.areaM2, inside, room.pressurePa, rho, 1, 0, inside);
  const airM3 = (airKg * AIR_J_PER_KG_K * room.temperatureK) / room.pressurePa;
  const gasMol = Math.max(0, leakFlowKgPerS(parts.car, place)) / kgPerMol(network, vessel);
  return airM3 + (gasMol * GAS_J_PER_MOL_K * room.temperatureK) / room.pressurePa;
}

/** Of what is in a vessel: the loop's own refrigerant, and what is mixed with it. */
function kgPerMol(network: PlantParts['car']['network'], vessel: number): number {
  const own = FOREIGN_KG_PER_MOL[network.refrigerantId];
  const foreign = network.foreign();
  const foreignKg = foreign ? network.massKg(vessel, 'foreign') : 0;
  if (!foreign || foreignKg <= 0) return own;
  const ownKg = network.massKg(vessel, 'refrigerant');
  return (ownKg + foreignKg) / (ownKg / own + foreignKg / FOREIGN_KG_PER_MOL[foreign]);
}

/** A service port under its cap or a coupler. */
export function isSealed({ desk }: Pick<PlantParts, 'desk'>, place: string): boolean {
  return desk.caps[place] === true || Object.values(desk.hoses).some(({ port }) => port === place);
}
