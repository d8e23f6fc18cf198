/**
 * Thermostatic expansion valve: its needle stands where the bulb's pressure balances evaporator pressure and spring.
 *
 *   lift = (p_bulb - p_evaporator - static * s) / (gradient * s), 0 .. 1.25,   m = CdA (bleed + (1 - bleed) lift) sqrt(2 rho dp)
 *
 * s is dp/dT of saturation of what is sealed in the bulb, at a usual evaporator temperature, so that superheats in kelvin
 * can be given: bulb and spring belong to the valve and know nothing of what is in the loop. The bulb follows the suction
 * line with a lag and has a maximum operating pressure, above which it holds no liquid. Linear in superheat, as is usual
 * (form seen in an open air-conditioner model). A valve is rated short of its stop: it has a quarter more in reserve
 * (common practice, no source). A small bleed notch lets a standing loop come level.
 */
import type { RefrigerantId } from '../refrigerant/refrigerant';
import type { MeteringInlet } from './meteringInlet';
import { seatPa } from './meteringInlet';

/** Pa per K of saturation near 3.5 °C, by the bulb's fluid: the spring is made for its bulb. */
export const SPRING_PA_PER_K: Readonly<Record<RefrigerantId, number>> = {
  'R-134a': 11700,
  'R-12': 11050,
  'R-1234yf': 11700,
};
/** How much of a further rise the bulb still feels over its maximum operating pressure. */
const OVER_MAXIMUM_SLOPE = 0.05;
const GAS_CHOKE = 0.5;
/** Where the needle meets its stop, over its rated lift. */
export const LIFT_AT_STOP = 1.25;

/** 0 shut, 1 at its rating, and up to its stop. `bulbSaturationPa`: of the bulb's own fluid at the bulb's temperature. */
export function expansionValveLift(
  bulbSaturationPa: number,
  evaporatorPa: number,
  staticSuperheatK: number,
  gradientK: number,
  maximumOperatingPa: number,
  springPaPerK: number,
): number {
  const over = bulbSaturationPa - maximumOperatingPa;
  const bulbPa = over > 0 ? maximumOperatingPa + OVER_MAXIMUM_SLOPE * over : bulbSaturationPa;
  const lift = (bulbPa - evaporatorPa - staticSuperheatK * springPaPerK) / (gradientK * springPaPerK);
  return lift < 0 ? 0 : lift > LIFT_AT_STOP ? LIFT_AT_STOP : lift;
}

/** kg/s through an open area `areaM2` (discharge coefficient included). */
export function expansionValveFlow(areaM2: number, inlet: MeteringInlet): number {
  const drop = inlet.pressurePa - inlet.downstreamPa;
  if (drop <= 0) return 0;
  const gas = (inlet.quality * inlet.vapourM3PerKg) / inlet.volumeM3PerKg;
  const most = (1 - GAS_CHOKE * (gas < 1 ? gas : 1)) * inlet.pressurePa;
  const seat = seatPa(inlet.pressurePa);
  const root = Math.sqrt((2 * Math.max(seat, Math.min(drop, most))) / inlet.volumeM3PerKg);
  return drop < seat ? (areaM2 * root * drop) / seat : areaM2 * root;
}
