/**
 * Water in refrigerant: how much dissolves, how much there is, and how much falls out when it gets cold.
 *
 *   solubility = s25 exp(B (1 / 298.15 - 1 / T)),  mg of water per kg of liquid
 *
 * From memory of the moisture chapter of a refrigeration handbook, to some 15 %: R-12 26 mg/kg at 0 °C and 90 at 25;
 * R-134a 450 and 1,100; R-1234yf about two thirds of that [guess]. What is over it at a metering device freezes there.
 */
import { exp } from '../numerics/exp';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import type { NetworkCore } from './networkCore';

const AT_25_C: Readonly<Record<RefrigerantId, number>> = { 'R-134a': 1100, 'R-12': 90, 'R-1234yf': 730 };
const RISE_K: Readonly<Record<RefrigerantId, number>> = { 'R-134a': 2910, 'R-12': 4045, 'R-1234yf': 2910 };
const MG_PER_KG = 1e6;
const WARM_K = 298.15;
const COLDEST_K = 180;

export function waterSolubilityMgPerKg(fluid: RefrigerantId, temperatureK: number): number {
  const t = temperatureK < COLDEST_K ? COLDEST_K : temperatureK;
  return AT_25_C[fluid] * exp(RISE_K[fluid] * (1 / WARM_K - 1 / t));
}

/** mg of water that goes with a kg of the refrigerant of `vessel`, dissolved or free; what a drier holds is not in it. */
export function waterMgPerKg(core: NetworkCore, vessel: number): number {
  const { numbers: n } = core;
  const water = n.extra[2][vessel] - n.adsorbed[vessel];
  return water > 0 ? (MG_PER_KG * water) / n.held[vessel] : 0;
}

/** kg of water that falls out of each kg of the refrigerant of `vessel` when it is brought to `temperatureK`. */
export function freeWaterShare(core: NetworkCore, vessel: number, temperatureK: number): number {
  const carried = waterMgPerKg(core, vessel);
  if (carried <= 0) return 0;
  const over = carried - waterSolubilityMgPerKg(core.refrigerant.id, temperatureK);
  return over > 0 ? over / MG_PER_KG : 0;
}
