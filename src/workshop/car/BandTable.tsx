/** The chart's numbers: needles and vents of this car and of a sound one at each temperature looked at. */
import { For, type JSX } from 'solid-js';
import { type DisplayUnits, inWords, writePressure, writeTemperature } from '../../instruments/displayUnits';
import { word } from '../../words/words';
import { isOutside } from './carLines';
import type { CarsAt } from './carStory';

export function BandTable(props: {
  readonly band: readonly CarsAt[];
  readonly units: DisplayUnits;
}): JSX.Element {
  const temperature = (kelvin: number): string => inWords(writeTemperature(kelvin, props.units.temperature));
  const pressure = (pa: number, face: 'low' | 'high'): string =>
    writePressure(pa, props.units.pressure, face).number;
  const head = (): string[] => [
    `${word('workshopCar.gauge.low')}, ${props.units.pressure}`,
    `${word('workshopCar.gauge.high')}, ${props.units.pressure}`,
    word('workshopCar.band.vent'),
  ];
  return (
    <details class="wc-numbers">
      <summary>{word('workshopCar.band.numbers')}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              {word('workshopCar.band.air')}
            </th>
            <For each={head()}>
              {(name) => (
                <th scope="colgroup" colSpan={2}>
                  {name}
                </th>
              )}
            </For>
          </tr>
          <tr>
            <For each={head()}>
              {() => (
                <>
                  <th scope="col">{word('workshopCar.band.own')}</th>
                  <th scope="col">{word('workshopCar.band.healthy')}</th>
                </>
              )}
            </For>
          </tr>
        </thead>
        <tbody>
          <For each={props.band}>
            {(at) => (
              <tr classList={{ out: isOutside(at) }}>
                <th scope="row">{temperature(at.ambientK)}</th>
                <td>{pressure(at.own.low.meanPa, 'low')}</td>
                <td>{pressure(at.sound.low.meanPa, 'low')}</td>
                <td>{pressure(at.own.high.meanPa, 'high')}</td>
                <td>{pressure(at.sound.high.meanPa, 'high')}</td>
                <td>{temperature(at.own.ventK)}</td>
                <td>{temperature(at.sound.ventK)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </details>
  );
}
