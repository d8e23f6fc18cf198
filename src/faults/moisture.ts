/**
 * Water in the loop: the desiccant has taken up all it can, and up to 8 g go round with the refrigerant. What is more than
 * dissolves in the cold freezes in the metering device where the coil is under 0 °C; in the warm it shows nothing. The
 * amount is [guess].
 */
import type { VehicleData } from '../loop/car/vehicles';
import type { Fault } from './fault';

const MOST_KG = 0.008;

/** kg that the desiccants of the car can hold. */
function desiccantKg({ highSide, lowSide }: VehicleData): number {
  return [...highSide.parts, ...lowSide.parts].reduce((sum, { desiccant }) => sum + (desiccant ?? 0), 0);
}

export const moisture: Fault = {
  id: 'moisture',
  applies: () => true,
  quantity: { name: 'freeWater', unit: 'kg', at: (severity) => MOST_KG * severity },
  contents: (filling, severity, vehicle) =>
    severity > 0
      ? { ...filling, waterKg: filling.waterKg + desiccantKg(vehicle) + MOST_KG * severity }
      : filling,
  clearedBy: [],
  excludes: [],
  // at 32 °C with windows open the coil is warmer than ice
  signs: { severity: 0.9, 'orifice-tube': {}, 'expansion-valve': {} },
};
