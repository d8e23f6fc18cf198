/**
 * What decides whether the clutch is in and the fans turn: pressure switches with their two set points, the fin
 * thermostat, thermal protection by the hotter of the compressor's body and the gas behind it, and the request itself.
 * Gauge pressures, as the switches feel.
 */
import type { Network } from '../network';
import type { CarLoop, CarPart } from './assembleLoop';
import { AT } from './carNumbers';
import { coldestFinK } from './coldestFinK';
import { stepCompressorDrive } from './compressorDrive';
import { coolingAsked } from './coolingAsked';
import { stepFans } from './fans';
import { latch } from './latch';
import { stepThermal } from './thermalProtection';
import type { VehicleData } from './vehicles';

/** A diaphragm switch follows the pressure with this lag, s. */
const SWITCH_LAG_S = 0.15;

export function stepControls(
  network: Network,
  vehicle: VehicleData,
  loop: CarLoop,
  coil: CarPart,
  dtS: number,
): void {
  const r = network.reserve;
  const { switches } = vehicle;
  const atmosphere = r[AT.ambientPressurePa];
  const highGauge = network.pressurePa(loop.high) - atmosphere;
  const lowGauge =
    (switches.low.at === 'high' ? network.pressurePa(loop.high) : network.pressurePa(loop.low)) - atmosphere;
  r[AT.feltLowPa] += ((lowGauge - r[AT.feltLowPa]) * dtS) / (SWITCH_LAG_S + dtS);
  const shift = r[AT.lowSwitchShiftPa];
  r[AT.lowSwitch] = latch(
    r[AT.lowSwitch],
    r[AT.feltLowPa],
    switches.low.opens + shift,
    switches.low.closes + shift,
  );
  r[AT.highSwitch] =
    r[AT.highCutOut] > 0.5
      ? latch(r[AT.highSwitch], -highGauge, -switches.high.opens, -switches.high.closes)
      : 1;
  stepThermal(network, switches.thermal, loop, dtS);
  stepFin(network, switches.fin, coil, dtS);
  stepCompressorDrive(network, vehicle, loop, coil, dtS);
  stepFans(r, vehicle.condenserAir.fans, coolingAsked(r, vehicle), highGauge, dtS);
}

function stepFin(network: Network, fin: VehicleData['switches']['fin'], coil: CarPart, dtS: number): void {
  const r = network.reserve;
  if (!fin) {
    r[AT.finSwitch] = 1;
    return;
  }
  r[AT.feltFinK] += ((coldestFinK(network, coil) - r[AT.feltFinK]) * dtS) / (fin.lag + dtS);
  const shift = r[AT.finSwitchShiftK];
  r[AT.finSwitch] = latch(r[AT.finSwitch], r[AT.feltFinK], fin.opens + shift, fin.closes + shift);
}
