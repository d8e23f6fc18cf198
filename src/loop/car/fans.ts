/**
 * The condenser's fans: with the clutch, or by the pressure of the high side. One that comes on late waits for that much
 * more on the high side. One that should run with the clutch then is switched by pressure too, in a band of 0.3 MPa that
 * lies under any pressure of the high side with no delay, and comes up as the delay grows: from 0.3 MPa of it on the fan
 * waits for 1.3 MPa and that much more, about where fans switched by pressure do [guess]. One on the engine's belt turns
 * with it through a coupling that slips, to 1.4 times its flow at 1,500 rpm at most [guess]; no switch, relay or feed is its.
 */
import { AT } from './carNumbers';
import { latch } from './latch';
import type { VehicleData } from './vehicles';

const FAN_LAG_S = 1;
const LATE_FROM_PA = 1.3e6;
const LATE_BAND_PA = 3e5;
const WHOLLY_LATE_PA = 3e5;
const BELT_FAN_AT_REV_PER_S = 25;
const BELT_FAN_MOST = 1.4;

/** A fan with the clutch runs while cooling is asked for, also when a switch holds the clutch out. */
export function stepFans(
  r: Float64Array,
  fans: VehicleData['condenserAir']['fans'],
  coolingIsAsked: boolean,
  highGauge: number,
  dtS: number,
): void {
  const asked = coolingIsAsked ? 1 : 0;
  const late = r[AT.fanLatePa];
  const unswitched = 1 - Math.min(1, late / WHOLLY_LATE_PA);
  const lateFrom = LATE_FROM_PA - unswitched * (LATE_FROM_PA + LATE_BAND_PA);
  for (let i = 0; i < fans.length; i++) {
    const { runs, on, off } = fans[i];
    const wanted = AT.fanWanted0 + i;
    if (runs === 'engine') {
      r[wanted] = r[AT.engineRevPerS] > 0 ? 1 : 0;
      follow(r, i, Math.min(BELT_FAN_MOST, r[AT.engineRevPerS] / BELT_FAN_AT_REV_PER_S), dtS);
      continue;
    }
    const comesOn = late + (runs === 'pressure' ? (on ?? 0) : lateFrom);
    const goesOff = runs === 'pressure' ? late + (off ?? 0) : comesOn - LATE_BAND_PA;
    r[wanted] = asked * latch(r[wanted], highGauge, goesOff, comesOn);
    follow(r, i, Math.max(r[wanted], r[AT.fanCalled]) * r[AT.fanHealth0 + i], dtS);
  }
}

function follow(r: Float64Array, fan: number, target: number, dtS: number): void {
  const speed = AT.fanSpeed0 + fan;
  r[speed] += ((target - r[speed]) * dtS) / (FAN_LAG_S + dtS);
  if (r[speed] < 1e-4) r[speed] = 0;
}
