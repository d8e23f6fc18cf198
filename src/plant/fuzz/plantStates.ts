/**
 * The states of a car that a command may meet, by what is under way in the loop. They exclude each other: the first that
 * holds is the one. Those from `running` on are of a car whose engine turns, or that has none and has its cooling on.
 */

import { AT } from '../../loop/car/carNumbers';
import { isSeized } from '../../loop/car/compressorWear';
import { coolingAsked } from '../../loop/car/coolingAsked';
import { hasEngine } from '../../loop/car/hasEngine';
import type { PlantParts } from '../assemblePlant';

export const PLANT_STATES = [
  'seized',
  'open',
  'evacuated',
  'standing',
  'running',
  'tripped',
  'cycled-out',
  'idling',
] as const;
export type PlantState = (typeof PLANT_STATES)[number];

/** Both sides under this share of the air's pressure. */
const VACUUM_SHARE = 0.5;
const TURNS_REV_PER_S = 0.01;

export function plantState({ car, desk, options }: PlantParts): PlantState {
  const { network, loop } = car;
  const r = network.reserve;
  if (isSeized(r)) return 'seized';
  if (desk.search.opened.length > 0) return 'open';
  const vacuumPa = VACUUM_SHARE * options.weather.pressurePa;
  if (network.pressurePa(loop.high) < vacuumPa && network.pressurePa(loop.low) < vacuumPa) return 'evacuated';
  const isOff = r[AT.engineRevPerS] === 0 && (hasEngine(car.vehicle) || !desk.acOn);
  if (isOff) return 'standing';
  if (r[AT.compressorRevPerS] > TURNS_REV_PER_S) return 'running';
  // on too high a pressure, or too hot
  if (r[AT.highSwitch] < 0.5 || r[AT.thermalSwitch] < 0.5) return 'tripped';
  // cooling is asked for, and the low or the fin switch says no
  if (coolingAsked(r, car.vehicle) && r[AT.lowSwitch] * r[AT.finSwitch] < 0.5) return 'cycled-out';
  return 'idling';
}
