/** What each instrument has to feel, in the order of `CHANNELS`; NaN where it touches nothing. */
import { CLAMP_AIR_SHARE } from '../equipment/instruments';
import type { HoseId } from '../equipment/hoses';
import type { PlantParts } from './assemblePlant';
import { placeNamed } from './linePlaces';
import { CHANNELS } from './panel';

const truth = new Float64Array(CHANNELS.length);

/** Refreshed and handed out again: one array for all plants, read at once. */
export function readTruth(parts: PlantParts): Float64Array {
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
    sum = sum !== sum ? kg : sum + kg;
  }
  return sum;
}
