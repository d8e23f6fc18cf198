/**
 * The shipped cars with other compressors, for tests: variable ones, held by their own valve or by the car, and an electric
 * one. Invented numbers, as in the cars themselves; each small car keeps its switches but the one that would cycle it.
 */
import { type VehicleData, vehicleOf } from '../../src/loop/car/vehicles';

type Compressor = VehicleData['compressor'];

/** Suction held at 0.30 MPa absolute, about 0 °C for R-134a. */
export const SUCTION_SET_POINT_PA = 300_000;
export const COIL_SET_POINT_K = 275.15;

function withCompressor(id: string, compressor: Partial<Compressor>): VehicleData {
  const car = vehicleOf(id);
  const { fin: _fin, ...switches } = car.switches;
  const low = { at: 'low', opens: 30_000, closes: 80_000 } as const;
  return { ...car, switches: { ...switches, low }, compressor: { ...car.compressor, ...compressor } };
}

export function withOwnValve(id: string): VehicleData {
  const { displacement } = vehicleOf(id).compressor;
  return withCompressor(id, {
    kind: 'variable',
    displacement: 1.5 * displacement,
    displacementControl: {
      holds: 'suction',
      setPoint: SUCTION_SET_POINT_PA,
      band: 60_000,
      least: 0.05,
      lag: 8,
    },
  });
}

export function heldByTheCar(id: string): VehicleData {
  const { displacement } = vehicleOf(id).compressor;
  return withCompressor(id, {
    kind: 'variable',
    displacement: 1.5 * displacement,
    displacementControl: { holds: 'coil', setPoint: COIL_SET_POINT_K, band: 6, least: 0.03, lag: 20 },
  });
}

export function electric(id: string): VehicleData {
  const { pulleyRatio: _ratio, ...rest } = vehicleOf(id).compressor;
  const car = withCompressor(id, {});
  return {
    ...car,
    compressor: {
      ...rest,
      kind: 'electric',
      displacement: 34e-6,
      drive: {
        supply: 'high-voltage',
        setPoint: COIL_SET_POINT_K,
        band: 6,
        lag: 20,
        least: 800 / 60,
        most: 8000 / 60,
        softStart: 10,
      },
    },
  };
}

/** A car whose high-pressure switch has been bridged. */
export function withoutCutOut(car: VehicleData): VehicleData {
  return { ...car, switches: { ...car.switches, high: { ...car.switches.high, opens: 9e6, closes: 8e6 } } };
}
