/** What the request for cooling is made of, and what has to allow it. */
import { AT } from './carNumbers';
import type { VehicleData } from './vehicles';

/** The air conditioning is on, air moves, and what turns the compressor runs: the engine, or a motor of its own. */
export function coolingAsked(r: Float64Array, { compressor }: Pick<VehicleData, 'compressor'>): boolean {
  const driven = compressor.kind === 'electric' || r[AT.engineRevPerS] > 0;
  return r[AT.airConditioningOn] > 0.5 && r[AT.blowerStep] > 0.5 && driven;
}

/** Every switch in the line is closed, or bridged. */
export function switchesAllow(r: Float64Array): boolean {
  const low = Math.max(r[AT.lowSwitch], r[AT.lowBridged]);
  const high = Math.max(r[AT.highSwitch], r[AT.highBridged]);
  return low * high * r[AT.finSwitch] * r[AT.thermalSwitch] > 0.5;
}

/** A compressor that the car controls, or an electric one, has none. */
export function hasClutch({ compressor }: Pick<VehicleData, 'compressor'>): boolean {
  if (compressor.kind === 'electric') return false;
  return compressor.kind === 'fixed' || compressor.displacementControl?.holds === 'suction';
}
