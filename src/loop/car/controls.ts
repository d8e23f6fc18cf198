/**
 * What decides whether the clutch is in and the fans turn: pressure switches with their two set points, the fin
 * thermostat, thermal protection on the compressor's body, and the request itself. Gauge pressures, as the switches feel.
 */
import type { Network } from '../network';
import type { CarLoop, CarPart } from './assembleLoop';
import { AT } from './carNumbers';
import type { VehicleData } from './vehicles';

/** A diaphragm switch follows the pressure with this lag, s. */
const SWITCH_LAG_S = 0.15;
const CLUTCH_LAG_S = 0.1;
const FAN_LAG_S = 1;

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
  r[AT.lowSwitch] = latch(r[AT.lowSwitch], r[AT.feltLowPa], switches.low.opens, switches.low.closes);
  r[AT.highSwitch] = latch(r[AT.highSwitch], -highGauge, -switches.high.opens, -switches.high.closes);
  const body = network.wallTemperatureK(loop.low, network.cellCount(loop.low) - 1);
  r[AT.thermalSwitch] = latch(r[AT.thermalSwitch], -body, -switches.thermal.opens, -switches.thermal.closes);
  stepFin(network, switches.fin, coil, dtS);
  stepClutch(network, vehicle, loop, dtS);
  stepFans(r, vehicle.condenserAir.fans, highGauge, dtS);
}

/** 1 once `value` is over `closes`, 0 once it is under `opens`; between them as before. */
function latch(was: number, value: number, opens: number, closes: number): number {
  return value < opens ? 0 : value > closes ? 1 : was;
}

function stepFin(network: Network, fin: VehicleData['switches']['fin'], coil: CarPart, dtS: number): void {
  const r = network.reserve;
  if (!fin) {
    r[AT.finSwitch] = 1;
    return;
  }
  let coldest = 1e9;
  for (let i = 0; i < coil.cells; i++) {
    const wall = network.wallTemperatureK(coil.vessel, coil.firstCell + i);
    if (wall < coldest) coldest = wall;
  }
  r[AT.feltFinK] += ((coldest - r[AT.feltFinK]) * dtS) / (fin.lag + dtS);
  r[AT.finSwitch] = latch(r[AT.finSwitch], r[AT.feltFinK], fin.opens, fin.closes);
}

function stepClutch(network: Network, vehicle: VehicleData, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  const asked = r[AT.airConditioningOn] > 0.5 && r[AT.engineRevPerS] > 0 && r[AT.blowerStep] > 0.5;
  const allowed = r[AT.lowSwitch] * r[AT.highSwitch] * r[AT.finSwitch] * r[AT.thermalSwitch] > 0.5;
  const wanted = asked && allowed && r[AT.clutchHealth] > 0;
  if (wanted && r[AT.clutchIn] < 0.5) r[AT.clutchCycles] += 1;
  r[AT.clutchIn] = wanted ? 1 : 0;
  if (wanted) r[AT.clutchOnS] += dtS;
  // a worn clutch slips: what it passes on of the pulley's speed
  const target = wanted ? r[AT.engineRevPerS] * vehicle.compressor.pulleyRatio * r[AT.clutchHealth] : 0;
  const speed = r[AT.compressorRevPerS] + ((target - r[AT.compressorRevPerS]) * dtS) / (CLUTCH_LAG_S + dtS);
  r[AT.compressorRevPerS] = speed < 0.01 ? 0 : speed;
  network.setSpeed(loop.compressor, r[AT.compressorRevPerS]);
}

/** A fan with the clutch runs while cooling is asked for, also when a switch holds the clutch out. */
function stepFans(
  r: Float64Array,
  fans: VehicleData['condenserAir']['fans'],
  highGauge: number,
  dtS: number,
): void {
  const asked = r[AT.airConditioningOn] > 0.5 && r[AT.engineRevPerS] > 0 && r[AT.blowerStep] > 0.5 ? 1 : 0;
  for (let i = 0; i < fans.length; i++) {
    const { runs, on, off } = fans[i];
    const wanted = AT.fanWanted0 + i;
    if (runs === 'clutch') r[wanted] = asked;
    else r[wanted] = asked * latch(r[wanted], highGauge, off ?? 0, on ?? 0);
    const target = r[wanted] * r[AT.fanHealth0 + i];
    const speed = AT.fanSpeed0 + i;
    r[speed] += ((target - r[speed]) * dtS) / (FAN_LAG_S + dtS);
    if (r[speed] < 1e-4) r[speed] = 0;
  }
}
