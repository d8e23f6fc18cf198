/**
 * What a scenario and a seed ask of the plant, in SI. What the seed varies is drawn evenly between the two ends the
 * scenario gives; nothing else in the car depends on the seed but the errors of the instruments.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { type PlaceSpec, USUAL_PLACE } from '../../equipment/place';
import { keyedUniform } from '../../numerics/keyedRandom';
import type { PlantOptions } from '../../plant/buildPlant';
import { parseQuantity } from '../../units/quantity';
import { STEPS_PER_SECOND } from '../clock';

const STANDARD_PRESSURE = '101.325 kPa abs';

export function plantOptions(data: ScenarioData, seed: number): PlantOptions {
  const { contents, weather, bench, faults } = data;
  return {
    vehicleId: data.vehicle,
    refrigerant: contents.refrigerant,
    chargeKg: parseQuantity(contents.charge, 'mass'),
    start: contents.state,
    weather: {
      temperatureK: varied(data, 'temperature', seed) ?? parseQuantity(weather.temperature, 'temperature'),
      relativeHumidity: varied(data, 'humidity', seed) ?? parseQuantity(weather.humidity, 'ratio'),
      pressurePa: parseQuantity(weather.pressure ?? STANDARD_PRESSURE, 'absolutePressure'),
      ...(weather.sun === undefined ? {} : { sunWPerM2: parseQuantity(weather.sun, 'irradiance') }),
    },
    faults: faults.map(({ fault, severity, site, gas, onset }) => ({
      id: fault,
      severity,
      ...(site === undefined ? {} : { site }),
      ...(gas === undefined ? {} : { gas }),
      onsetStep: onset === undefined ? 0 : Math.round(parseQuantity(onset, 'time') * STEPS_PER_SECOND),
    })),
    bench: {
      hoses: bench.hoses,
      cans: bench.cans.map(({ id, net, printed, tare, oil, sealer, dye }) => ({
        id,
        netKg: parseQuantity(net, 'mass'),
        printedTotalKg: parseQuantity(printed, 'mass'),
        tareKg: parseQuantity(tare, 'mass'),
        oilKg: massOf(oil),
        sealerKg: massOf(sealer),
        dyeKg: massOf(dye),
      })),
      tools: bench.tools ?? [],
      ...(bench.refrigerant === undefined ? {} : { refrigerant: bench.refrigerant }),
      rated: bench.rated === true,
      ...(bench.recoveryTank === undefined ? {} : { tankHeldKg: massOf(bench.recoveryTank) }),
      ...(bench.oil === undefined ? {} : { oil: bench.oil }),
    },
    found: {
      temperature: data.found?.temperature ?? 'coldest',
      converted: data.found?.converted === true,
      caps: data.found?.caps ?? [],
      covers: data.found?.covers ?? [],
    },
    place: placeOf(data),
    heaterOn: data.found?.heater === 'on',
    foundSealerKg: massOf(data.found?.sealer),
    papers: data.papers.map(({ id }) => id),
    seed,
  };
}

function placeOf({ place }: ScenarioData): PlaceSpec {
  if (!place) return USUAL_PLACE;
  const { kind, volume, tight } = place;
  return {
    kind,
    volumeM3: volume === undefined ? USUAL_PLACE.volumeM3 : parseQuantity(volume, 'volume'),
    tight: tight === true,
  };
}

const massOf = (text: string | undefined): number => (text === undefined ? 0 : parseQuantity(text, 'mass'));

function varied(
  { varies = [] }: ScenarioData,
  what: 'temperature' | 'humidity',
  seed: number,
): number | null {
  const range = varies.find((variation) => variation.what === what);
  if (!range) return null;
  const kind = what === 'temperature' ? 'temperature' : 'ratio';
  const [from, to] = [parseQuantity(range.from, kind), parseQuantity(range.to, kind)];
  return from + (to - from) * keyedUniform(seed, 'scenario', what, 0);
}
