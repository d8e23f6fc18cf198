/** The condenser's fans: with the clutch, or by the pressure of the high side. */
import { AT } from './carNumbers';
import { latch } from './latch';
import type { VehicleData } from './vehicles';

const FAN_LAG_S = 1;

/** A fan with the clutch runs while cooling is asked for, also when a switch holds the clutch out. */
export function stepFans(
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
