/**
 * How a charge lies in a car that has stood: both sides at one pressure and temperature, liquid on both, air by volume
 * of vapour. The share of the liquid on each side is [guess]; a minute of running forgets it.
 */
import { refrigerant } from '../../refrigerant/fluids';
import type { Isobar } from '../../refrigerant/refrigerant';
import { settledShare } from '../oilSump';
import type { LoopContents } from './assembleLoop';
import type { CarStart } from './car';
import { fillSides, OIL_ON_HIGH, oilInLoopKg } from './fillSides';
import { lowSideOf, type Side } from './lowSide';
import type { VehicleData } from './vehicles';

const MOST_LIQUID_SHARE = 0.92;

export function restSplit(vehicle: VehicleData, start: CarStart): LoopContents {
  const iso = refrigerant(start.refrigerant).isobar('continue');
  const psat = refrigerant(start.refrigerant).saturationPressurePa(start.ambientK);
  const sides = { high: vehicle.highSide, low: lowSideOf(vehicle) };
  const high = volume(sides.high);
  const low = volume(sides.low);
  const total = high + low;
  iso.setPressurePa(psat);
  const vl = iso.liquidVolumeM3PerKg;
  const vv = iso.vapourVolumeM3PerKg;
  const oilKg = oilInLoopKg(vehicle.compressor.oil, start);
  const holding = (1 - OIL_ON_HIGH) * oilKg;
  const free = start.chargeKg - holding * settledShare(psat, psat);
  const liquid = Math.max(0, (free - total / vv) / (1 / vl - 1 / vv));
  const highLiquid = Math.min(liquid * restingShare(vehicle), MOST_LIQUID_SHARE * high);
  const lowLiquid = Math.min(liquid - highLiquid, low);
  const highKg =
    free * vv <= total
      ? high * dryDensity(start, iso, psat, total, holding)
      : highLiquid / vl + (high - highLiquid) / vv;
  const gas = total - liquid;
  return fillSides(
    start,
    oilKg,
    { kg: highKg, volumeShare: high / total, gasShare: (high - highLiquid) / gas },
    {
      kg: Math.max(1e-12, start.chargeKg - highKg),
      volumeShare: low / total,
      gasShare: (low - lowLiquid) / gas,
    },
    sides,
  );
}

/** kg/m3 with no liquid anywhere: one pressure of superheated vapour, with what the oil holds at it. */
function dryDensity(start: CarStart, iso: Isobar, psat: number, volumeM3: number, oilKg: number): number {
  let from = 5;
  let to = psat;
  let density = 0;
  for (let i = 0; i < 60; i++) {
    const p = 0.5 * (from + to);
    iso.setPressurePa(p);
    density = 1 / iso.volumeM3PerKg(iso.enthalpyFromTemperatureJPerKg(start.ambientK));
    if (volumeM3 * density + oilKg * settledShare(p, psat) > start.chargeKg) to = p;
    else from = p;
  }
  return density;
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
