/**
 * The plant that ghosts of a forecast live in: the scenario's car and weather with nothing on the bench, since a hose costs
 * time and moves a needle by less than a spread. Seeds vary the weather by little, so ghosts live in steps of 1 K and a
 * tenth of humidity from the scenario's own figures: at most half a kelvin off, a third of a reading's spread, and most
 * scenarios need one set of ghosts for all their seeds.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { PlantOptions } from '../../plant/buildPlant';
import { plantOptions } from '../../session/scenario/plantOptions';
import { parseQuantity } from '../../units/quantity';

const STEP_K = 1;
const STEP_HUMIDITY = 0.1;

export function ghostOptions(data: ScenarioData, seed: number): PlantOptions {
  const options = plantOptions(data, seed);
  const { temperatureK, relativeHumidity } = options.weather;
  const { refrigerant } = options.bench;
  return {
    ...options,
    weather: {
      ...options.weather,
      temperatureK: stepped(parseQuantity(data.weather.temperature, 'temperature'), temperatureK, STEP_K),
      relativeHumidity: stepped(
        parseQuantity(data.weather.humidity, 'ratio'),
        relativeHumidity,
        STEP_HUMIDITY,
      ),
    },
    faults: [],
    foundSealerKg: 0,
    bench: { hoses: [], cans: [], ...(refrigerant === undefined ? {} : { refrigerant }) },
    seed: 0,
  };
}

const stepped = (from: number, value: number, step: number): number =>
  from + step * Math.round((value - from) / step);
