/**
 * An electric compressor: its motor turns as fast as holds the coil's coldest fin at a set point, whatever the engine does.
 *
 *   e = (fin - set point) / band,   d(memory)/dt = e / lag,   speed = least + (most - least) (memory + e / 2)
 *
 * It starts softly, and no change of speed is faster than the start's ramp. Too cold by a band even at its least speed it
 * stops, and starts again a band over. The switches stop it. Numbers [guess].
 */
import type { Network } from '../network';
import type { CarLoop, CarPart } from './assembleLoop';
import { AT } from './carNumbers';
import { coldestFinK } from './coldestFinK';
import { isSeized } from './compressorWear';
import { coolingAsked, switchesAllow } from './coolingAsked';
import { latch } from './latch';
import type { VehicleData } from './vehicles';

type Drive = NonNullable<VehicleData['compressor']['drive']>;

const AT_ONCE = 0.5;
const FELT_LAG_S = 2;
/** Switched off it stands within this, s. */
const STOPS_S = 1;

export function stepElectric(
  network: Network,
  vehicle: VehicleData,
  drive: Drive,
  loop: CarLoop,
  coil: CarPart,
  dtS: number,
): void {
  const r = network.reserve;
  r[AT.controlCoilK] += ((coldestFinK(network, coil) - r[AT.controlCoilK]) * dtS) / (FELT_LAG_S + dtS);
  const allowed = coolingAsked(r, vehicle) && switchesAllow(r) && !isSeized(r);
  const needed = latch(
    r[AT.clutchIn],
    r[AT.controlCoilK],
    drive.setPoint - drive.band,
    drive.setPoint + drive.band,
  );
  const runs = allowed && needed > 0;
  if (runs && r[AT.clutchIn] < 0.5) r[AT.clutchCycles] += 1;
  r[AT.clutchIn] = runs ? 1 : 0;
  if (runs) r[AT.clutchOnS] += dtS;
  r[AT.compressorRevPerS] = speedAfter(r, drive, runs, dtS);
  network.setSpeed(loop.compressor, r[AT.compressorRevPerS]);
}

function speedAfter(r: Float64Array, drive: Drive, runs: boolean, dtS: number): number {
  const { least, most, softStart } = drive;
  const was = r[AT.compressorRevPerS];
  if (!runs) {
    r[AT.controlShare] = 0;
    return Math.max(0, was - (most * dtS) / STOPS_S);
  }
  const off = (r[AT.controlCoilK] - drive.setPoint) / drive.band;
  const memory = r[AT.controlShare] + (off * dtS) / drive.lag;
  r[AT.controlShare] = memory < 0 ? 0 : memory > 1 ? 1 : memory;
  const asked = r[AT.controlShare] + AT_ONCE * off;
  const target = least + (most - least) * (asked < 0 ? 0 : asked > 1 ? 1 : asked);
  const change = (most * dtS) / softStart;
  return was + Math.max(-change, Math.min(change, target - was));
}
