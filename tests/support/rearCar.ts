/** The saloon with a rear unit, as a long car has one: a second coil with its own valve or tube, blower and pipe. Invented. */
import { type VehicleData, vehicleOf } from '../../src/loop/car/vehicles';

const FRONT = vehicleOf('sedan');
const COIL = FRONT.lowSide.parts[0];
const PIPE = FRONT.lowSide.parts[2];
const EXTRA_KG = 0.25;

const REAR_VALVE: VehicleData['metering'] = {
  ...vehicleMetering('hatchback'),
  bulb: 'rear-suction',
  area: 0.3e-6,
};
const REAR_TUBE: VehicleData['metering'] = { kind: 'orifice-tube', bore: 1.1e-3, length: 0.0381 };

/** `joins` the accumulator, so that whatever liquid the rear coil lets by is caught there too. */
export function rearCar(metering: 'expansion-valve' | 'orifice-tube'): VehicleData {
  return {
    ...FRONT,
    label: { ...FRONT.label, charge: FRONT.label.charge + EXTRA_KG },
    rear: {
      joins: 'accumulator',
      parts: [
        {
          ...COIL,
          part: 'rear-evaporator',
          cells: 4,
          volume: 0.5 * COIL.volume,
          wall: 0.5 * COIL.wall,
          twoPhase: 0.5 * COIL.twoPhase,
          vapour: 0.5 * COIL.vapour,
          liquid: 0.5 * COIL.liquid,
        },
        { ...PIPE, part: 'rear-suction', volume: 2 * PIPE.volume },
      ],
      metering: metering === 'orifice-tube' ? REAR_TUBE : REAR_VALVE,
      air: {
        ...FRONT.evaporatorAir,
        conductance: 280,
        atFlow: 0.08,
        steps: [0.004, 0.04, 0.08],
        blowerHeat: 60,
      },
    },
  };
}

function vehicleMetering(id: string): Extract<VehicleData['metering'], { kind: 'expansion-valve' }> {
  const { metering } = vehicleOf(id);
  if (metering.kind !== 'expansion-valve') throw new RangeError(`${id} has no expansion valve`);
  return metering;
}
