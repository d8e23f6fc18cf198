/** The air outside that a scenario's seeds may bring, in kelvin, from and to. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { parseQuantity } from '../../units/quantity';

export function jobWeather({ weather, varies = [] }: ScenarioData): readonly [from: number, to: number] {
  const range = varies.find(({ what }) => what === 'temperature') ?? {
    from: weather.temperature,
    to: weather.temperature,
  };
  const ends = [range.from, range.to].map((text) => parseQuantity(text, 'temperature'));
  return [Math.min(...ends), Math.max(...ends)];
}
