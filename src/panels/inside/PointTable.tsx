/** The four state points as a table: the same numbers as in the diagram. A number pressed shows its place. */
import { For, type JSX, Show } from 'solid-js';
import {
  ATMOSPHERE_PA,
  type DisplayUnits,
  inWords,
  plainNumber,
  writePressure,
  writeTemperature,
} from '../../instruments/displayUnits';
import type { SpotChoice } from '../../instruments/loop/Spot';
import type { SpotId } from '../../instruments/loop/spots';
import { isKnown, type StatePoint } from '../../instruments/phGeometry';
import type { SaturationLine } from '../../instruments/saturation';
import { word } from '../../words/words';
import { phaseWords } from '../insideWords';
import { POINT_NUMBERS } from './insideState';

export interface PointTableProps {
  readonly points: readonly StatePoint[];
  readonly units: DisplayUnits;
  readonly saturation: SaturationLine;
  /** Of a healthy car handled alike; a column only where it is told. */
  readonly healthy?: readonly StatePoint[];
  readonly choice?: SpotChoice;
}

type PointNumber = (typeof POINT_NUMBERS)[number];

export const pointWord = (number: PointNumber): string =>
  [word('inside.point.p1'), word('inside.point.p2'), word('inside.point.p3'), word('inside.point.p4')][
    number - 1
  ];

const isLow = (number: PointNumber): boolean => number === 1 || number === 4;

export function pressureWords({ pressurePa }: StatePoint, number: PointNumber, units: DisplayUnits): string {
  return inWords(writePressure(pressurePa - ATMOSPHERE_PA, units.pressure, isLow(number) ? 'low' : 'high'));
}

export const temperatureWords = ({ temperatureK }: StatePoint, units: DisplayUnits): string =>
  inWords(writeTemperature(temperatureK, units.temperature));

function Name(props: { readonly number: PointNumber; readonly choice: SpotChoice | undefined }): JSX.Element {
  const spot = (): SpotId => `p${props.number}`;
  const badge = (): JSX.Element => (
    <i class={`bdg ${isLow(props.number) ? 'low' : 'high'}`} aria-hidden="true">
      {props.number}
    </i>
  );
  const isChosen = (): boolean => props.choice?.chosen === spot();
  return (
    <Show
      when={props.choice}
      fallback={
        <>
          {badge()} {pointWord(props.number)}
        </>
      }
    >
      {(choice) => (
        <button
          type="button"
          class="pt-btn"
          aria-pressed={isChosen()}
          onClick={() => choice().onChoose(isChosen() ? null : spot())}
        >
          {badge()} <span>{pointWord(props.number)}</span>
        </button>
      )}
    </Show>
  );
}

function Row(props: { readonly table: PointTableProps; readonly number: PointNumber }): JSX.Element {
  const point = (): StatePoint => props.table.points[props.number - 1];
  const healthy = (): StatePoint | undefined => props.table.healthy?.[props.number - 1];
  const written = (text: () => string): string => (isKnown(point()) ? text() : word('instrument.nothing'));
  return (
    <tr classList={{ on: props.table.choice?.chosen === `p${props.number}` }}>
      <th scope="row">
        <Name number={props.number} choice={props.table.choice} />
      </th>
      <td class="n">{written(() => pressureWords(point(), props.number, props.table.units))}</td>
      <td class="n">{written(() => temperatureWords(point(), props.table.units))}</td>
      <td class="n" data-enthalpy={props.number}>
        {written(() =>
          word('inside.enthalpyValue', { number: plainNumber(point().enthalpyJPerKg / 1000, 1) }),
        )}
      </td>
      <td>{isKnown(point()) ? phaseWords(props.table.saturation, point()) : ''}</td>
      <Show when={props.table.healthy}>
        <td class="mut">
          <Show when={healthy()}>
            {(one) =>
              isKnown(one())
                ? word('inside.healthyPoint', {
                    pressure: pressureWords(one(), props.number, props.table.units),
                    temperature: temperatureWords(one(), props.table.units),
                    phase: phaseWords(props.table.saturation, one()),
                  })
                : word('instrument.nothing')
            }
          </Show>
        </td>
      </Show>
    </tr>
  );
}

export function PointTable(props: PointTableProps): JSX.Element {
  return (
    <table class="st4">
      <caption class="vh">{word('inside.table.caption')}</caption>
      <thead>
        <tr>
          <th scope="col">{word('inside.table.point')}</th>
          <th scope="col" class="n">
            {word('inside.table.pressure')}
          </th>
          <th scope="col" class="n">
            {word('inside.table.temperature')}
          </th>
          <th scope="col" class="n">
            {word('inside.table.enthalpy')}
          </th>
          <th scope="col">{word('inside.table.phase')}</th>
          <Show when={props.healthy}>
            <th scope="col">{word('inside.table.healthy')}</th>
          </Show>
        </tr>
      </thead>
      <tbody>
        <For each={POINT_NUMBERS}>{(number) => <Row table={props} number={number} />}</For>
      </tbody>
    </table>
  );
}
