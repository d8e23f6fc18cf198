/**
 * How a charge lies in a car that has stood: both sides at one pressure and temperature, liquid on both, air by volume
 * of vapour. The share of the liquid on each side is [guess]; a minute of running forgets it.
 */
import { refrigerant } from '../../refrigerant/fluids';
import type { Isobar } from '../../refrigerant/refrigerant';
import { settledShare } from '../oilSump';
import type { LoopContents } from './assembleLoop';
import type { CarStart } from './car';
import { lowSideOf, type Side } from './lowSide';
import type { VehicleData } from './vehicles';

const MOST_LIQUID_SHARE = 0.92;

export function restSplit(vehicle: VehicleData, start: CarStart): LoopContents {
  const iso = refrigerant(start.refrigerant).isobar('continue');
  const t = start.ambientK;
  const psat = refrigerant(start.refrigerant).saturationPressurePa(t);
  const high = volume(vehicle.highSide);
  const low = volume(lowSideOf(vehicle));
  const total = high + low;
  iso.setPressurePa(psat);
  const vl = iso.liquidVolumeM3PerKg;
  const vv = iso.vapourVolumeM3PerKg;
  const oil = vehicle.compressor.oil;
  const free = start.chargeKg - oil * settledShare(psat, psat);
  const air = start.airKg ?? 0;
  if (free * vv <= total) return dry(start, iso, psat, high, low, oil, air);
  const liquid = (free - total / vv) / (1 / vl - 1 / vv);
  const highLiquid = Math.min(liquid * restingShare(vehicle), MOST_LIQUID_SHARE * high);
  const lowLiquid = Math.min(liquid - highLiquid, low);
  const highKg = highLiquid / vl + (high - highLiquid) / vv;
  const gas = total - liquid;
  return {
    temperatureK: t,
    highKg,
    lowKg: start.chargeKg - highKg,
    airHighKg: (air * (high - highLiquid)) / gas,
    airLowKg: (air * (low - lowLiquid)) / gas,
  };
}

/** No liquid anywhere: one pressure of superheated vapour, with what the oil holds at it. */
function dry(
  start: CarStart,
  iso: Isobar,
  psat: number,
  high: number,
  low: number,
  oil: number,
  air: number,
): LoopContents {
  let from = 5;
  let to = psat;
  let density = 0;
  for (let i = 0; i < 60; i++) {
    const p = 0.5 * (from + to);
    iso.setPressurePa(p);
    density = 1 / iso.volumeM3PerKg(iso.enthalpyFromTemperatureJPerKg(start.ambientK));
    if ((high + low) * density + oil * settledShare(p, psat) > start.chargeKg) to = p;
    else from = p;
  }
  const highKg = high * density;
  const share = high / (high + low);
  return {
    temperatureK: start.ambientK,
    highKg,
    lowKg: Math.max(1e-12, start.chargeKg - highKg),
    airHighKg: air * share,
    airLowKg: air * (1 - share),
  };
}

/** A receiver behind the condenser fills first; an accumulator takes little more than its share. [guess] */
const RECEIVER_WEIGHT = 6;
const ACCUMULATOR_WEIGHT = 1.5;

/** Share of the liquid that stands on the high side. */
function restingShare(vehicle: VehicleData): number {
  const high = wetVolume(vehicle.highSide, RECEIVER_WEIGHT);
  return high / (high + wetVolume(lowSideOf(vehicle), ACCUMULATOR_WEIGHT));
}

function wetVolume(side: Side, reservoirWeight: number): number {
  const weight = { reservoir: reservoirWeight, wet: 1, dry: 0 };
  return side.parts.reduce((sum, part) => sum + part.volume * weight[part.atRest], 0);
}

function volume(side: Side): number {
  return side.parts.reduce((sum, part) => sum + part.volume, 0);
}
