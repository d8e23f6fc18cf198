/** What each instrument has to feel, in the order of `CHANNELS` (panel.ts); NaN where it touches nothing. */

import type { HoseId } from '../equipment/hoses';
import { CLAMP_AIR_SHARE } from '../equipment/instruments';
import type { PlantParts } from './assemblePlant';
import { placeNamed } from './linePlaces';

/** Refreshes the panel's own array of what there is to feel, and hands it out. */
export function readTruth(parts: PlantParts): Float64Array {
  const { truth } = parts.panel;
  truth[0] = gaugePressurePa(parts, 'charging');
  truth[1] = gaugePressurePa(parts, 'gauge-low');
  truth[2] = gaugePressurePa(parts, 'gauge-high');
  truth[3] = airTemperatureK(parts);
  truth[4] = lineTemperatureK(parts);
  truth[5] = onScaleKg(parts);
  return truth;
}

function gaugePressurePa({ car, hoses, options }: PlantParts, id: HoseId): number {
  const hose = hoses.get(id);
  return hose ? car.network.pressurePa(hose.vessel) - options.weather.pressurePa : Number.NaN;
}

function airTemperatureK({ car, desk }: PlantParts): number {
  switch (desk.probes.air) {
    case 'centre-vent':
      return car.number('ventK');
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
  const place = at === null ? undefined : placeNamed(car, at);
  if (!place) return Number.NaN;
  const wallK = car.network.wallTemperatureK(place.vessel, place.firstCell + place.cells - 1);
  return (1 - CLAMP_AIR_SHARE) * wallK + CLAMP_AIR_SHARE * car.number('bayK');
}

function onScaleKg({ car, desk, cans }: PlantParts): number {
  let sum = Number.NaN;
  for (const [id, { spec, vessel }] of cans) {
    if (desk.cans[id].place !== 'scale') continue;
    const kg = spec.tareKg + car.network.massKg(vessel, 'refrigerant');
    sum = Number.isNaN(sum) ? kg : sum + kg;
  }
  return sum;
}
