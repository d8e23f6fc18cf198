/**
 * Gas that comes out at a place, m3/s at the room's pressure: refrigerant as the network let it out, and air or nitrogen
 * by the law of a choked opening, Y sqrt(2 rho x p) with x = 0.5, Y = 2/3, weighed by its share of the pressure.
 */
import type { RefrigerantId } from '../refrigerant/refrigerant';
import type { PlantParts } from './assemblePlant';
import { AIR_J_PER_KG_K } from './benchVessels';
import { leakFlowKgPerS } from './leakFlow';

const MOLAR_M3 = 0.0245;
const KG_PER_MOL: Readonly<Record<RefrigerantId, number>> = {
  'R-134a': 0.10203,
  'R-12': 0.12091,
  'R-1234yf': 0.11404,
};

export function gasFlowM3PerS(parts: PlantParts, place: string): number {
  const { network } = parts.car;
  const link = network.linkNamed(`leak:${place}`);
  const spec = network.structure().links.find(({ slot }) => slot === link)?.spec;
  if (spec?.kind !== 'valve' || isSealed(parts, place)) return 0;
  const { options } = parts;
  const room = options.weather;
  const inside = network.pressurePa(spec.from.vessel);
  const airPa = inside - network.refrigerantPressurePa(spec.from.vessel);
  const isChoked = inside > 2 * room.pressurePa;
  const rho = inside / (AIR_J_PER_KG_K * room.temperatureK);
  const airKg = isChoked ? spec.areaM2 * (2 / 3) * Math.sqrt(rho * inside) * (airPa / inside) : 0;
  const airM3 = (airKg * AIR_J_PER_KG_K * room.temperatureK) / room.pressurePa;
  const gasKg = Math.max(0, leakFlowKgPerS(parts.car, place));
  return airM3 + (gasKg * MOLAR_M3) / KG_PER_MOL[options.refrigerant];
}

/** A service port under its cap or a coupler. */
export function isSealed({ desk }: Pick<PlantParts, 'desk'>, place: string): boolean {
  return desk.caps[place] === true || Object.values(desk.hoses).some(({ port }) => port === place);
}
