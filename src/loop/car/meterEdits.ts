/**
 * Brings to the metering devices what faults left of them and of the line before them. Shares of an open area are of a
 * liquid line of some 6 mm bore [guess]; two devices behind one drier share it.
 */
import type { MeterName } from '../meterNumbers';
import type { Network } from '../network';
import type { CarLoop } from './assembleLoop';
import { AT } from './carNumbers';
import type { VehicleData } from './vehicles';

/** Discharge coefficient times area of a sound line, m2 [guess]. */
const LINE_AREA_M2 = 20e-6;

export function editMeters(network: Network, vehicle: VehicleData, loop: CarLoop): void {
  const r = network.reserve;
  const front = (name: MeterName, value: number): void => network.setMeter(loop.metering, name, value);
  const drierM2 = hasDrier(vehicle) ? inTheWay(r[AT.drierHealth]) : 0;
  network.setOpening(loop.metering, r[AT.meteringHealth]);
  front('area', r[AT.meteringArea]);
  front('leastLift', r[AT.valveLeastLift]);
  front('mostLift', r[AT.valveMostLift]);
  front('bulbCharge', r[AT.bulbCharge]);
  front('bulbLoose', r[AT.bulbLoose]);
  front('lineAreaM2', inTheWay(r[AT.liquidLineHealth]));
  if (loop.rearMetering < 0) {
    front('drierAreaM2', drierM2);
    return;
  }
  front('drierAreaM2', drierM2 / 2);
  network.setMeter(loop.rearMetering, 'drierAreaM2', drierM2 / 2);
}

export function hasDrier({ highSide }: VehicleData): boolean {
  return highSide.parts.some(({ part }) => part === 'drier');
}

/** 0 where the line is as open as it should be. */
function inTheWay(share: number): number {
  return share < 1 ? share * LINE_AREA_M2 : 0;
}
