/** Refrigerant that came out at a place of the loop in the last step, kg/s; negative where air went in. */
import type { Car } from '../loop/car/car';

export function leakFlowKgPerS({ network }: Car, place: string): number {
  const link = network.linkNamed(`leak:${place}`);
  return link < 0 ? 0 : network.massFlowKgPerS(link);
}
