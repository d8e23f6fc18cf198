/** What each instrument has to feel, in the order of `CHANNELS` (panel.ts); NaN where it touches nothing. */

import { CHARGING_TANK } from '../equipment/chargingTank';
import type { HoseId } from '../equipment/hoses';
import { NAMED_GASES } from '../equipment/identifier';
import { CLAMP_AIR_SHARE } from '../equipment/instruments';
import { OIL_INJECTOR } from '../equipment/oilInjector';
import { RECOVERY_TANK } from '../equipment/recoveryMachine';
import { SPECIES, type VesselIndex } from '../loop/networkTypes';
import type { PlantParts } from './assemblePlant';
import { placeWallK } from './linePlaces';

/** Refreshes the panel's own array of what there is to feel, and hands it out. */
export function readTruth(parts: PlantParts): Float64Array {
  const { truth } = parts.panel;
  truth[0] = gaugePressurePa(parts, 'charging');
  truth[1] = gaugePressurePa(parts, 'gauge-low');
  truth[2] = gaugePressurePa(parts, 'gauge-high');
  truth[3] = airTemperatureK(parts);
  truth[4] = lineTemperatureK(parts);
  truth[5] = onScaleKg(parts);
  readTools(parts, truth);
  return truth;
}

const FIRST_GAS = 10;

function readTools(parts: PlantParts, truth: Float64Array): void {
  const { car, hoses, desk, toolVessels } = parts;
  const { devices, sample } = desk.service;
  const onto = devices['micron-gauge']?.onto;
  const hose = onto ? hoses.get(onto) : undefined;
  truth[6] = hose ? car.network.pressurePa(hose.vessel) : Number.NaN;
  const { recoveryTank, chargingTank, separator } = toolVessels;
  truth[7] = tankKg(parts, recoveryTank, RECOVERY_TANK.tareKg);
  truth[8] = tankKg(parts, chargingTank, CHARGING_TANK.tareKg);
  truth[9] = separator < 0 ? Number.NaN : car.network.massKg(separator, 'oil') / OIL_INJECTOR.oilKgPerM3;
  for (let i = 0; i < NAMED_GASES.length; i++)
    truth[FIRST_GAS + i] = sample.shares === null ? Number.NaN : sample.shares[NAMED_GASES[i]];
}

/** Tank with all that is in it. */
function tankKg({ car }: PlantParts, vessel: VesselIndex, tareKg: number): number {
  if (vessel < 0) return Number.NaN;
  let kg = tareKg;
  for (const species of SPECIES) kg += car.network.massKg(vessel, species);
  return kg;
}

function gaugePressurePa({ car, hoses, options }: PlantParts, id: HoseId): number {
  const hose = hoses.get(id);
  return hose ? car.network.pressurePa(hose.vessel) - options.weather.pressurePa : Number.NaN;
}

function airTemperatureK({ car, desk }: PlantParts): number {
  switch (desk.probes.air) {
    case 'centre-vent':
      return car.number('ventK');
    case 'rear-vent':
      return car.number('rearVentK');
    case 'coil-outlet':
      return car.number('coilOutletK');
    case 'condenser-inlet':
      return car.number('condenserInletK');
    case 'outside':
      return car.number('ambientK');
    default:
      return Number.NaN;
  }
}

function lineTemperatureK({ car, desk }: PlantParts): number {
  const at = desk.probes.line;
  if (at === null) return Number.NaN;
  return (1 - CLAMP_AIR_SHARE) * placeWallK(car, at) + CLAMP_AIR_SHARE * car.number('bayK');
}

function onScaleKg({ car, desk, cans }: PlantParts): number {
  let sum = Number.NaN;
  for (const { spec, vessel } of cans.values()) {
    if (desk.cans[spec.id].place !== 'scale') continue;
    const kg = spec.tareKg + car.network.contentKg(vessel);
    sum = Number.isNaN(sum) ? kg : sum + kg;
  }
  return sum;
}
