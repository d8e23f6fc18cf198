/** Numbers of a finished session: what stood at a moment, and at each action as a table. */
import { For, type JSX } from 'solid-js';
import {
  inWords,
  plainNumber,
  writeClock,
  writeMass,
  writePressure,
  writeTemperature,
} from '../instruments/displayUnits';
import type { StatePoint } from '../instruments/phGeometry';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import { actionWords } from './actionWords';
import type { DebriefData, DebriefModel, Trace } from './debriefModel';

const NUMBERS_PER_POINT = 3;
const POINTS = 4;

/** Index of the last sample at or before a moment. */
export function sampleAt(seconds: ArrayLike<number>, moment: number): number {
  let low = 0;
  let high = seconds.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (seconds[middle] <= moment + 1e-9) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}

export function pointsAt({ points }: DebriefData, moment: number): StatePoint[] {
  const start = sampleAt(points.seconds, moment) * NUMBERS_PER_POINT * POINTS;
  return Array.from({ length: POINTS }, (_, i) => ({
    pressurePa: points.values[start + i * NUMBERS_PER_POINT],
    enthalpyJPerKg: points.values[start + i * NUMBERS_PER_POINT + 1],
    temperatureK: points.values[start + i * NUMBERS_PER_POINT + 2],
  }));
}

/** A lane's value at a moment; NaN where there is none. */
export function valueAt({ traces }: DebriefData, id: Trace['id'], moment: number): number {
  const trace = traces.find((one) => one.id === id);
  return trace ? trace.values[sampleAt(trace.seconds, moment)] : Number.NaN;
}

export function ActionTable(props: { readonly debrief: DebriefModel }): JSX.Element {
  const { data, units } = props.debrief;
  const value = (id: Trace['id'], moment: number): number => valueAt(data, id, moment);
  return (
    <table>
      <thead>
        <tr>
          <th scope="col" class="n">
            {word('debrief.time')}
          </th>
          <th scope="col">{word('debrief.action')}</th>
          <th scope="col" class="n">
            {word('debrief.lane.high')}
          </th>
          <th scope="col" class="n">
            {word('debrief.lane.low')}
          </th>
          <th scope="col" class="n">
            {word('debrief.lane.charge')}
          </th>
          <th scope="col" class="n">
            {word('debrief.lane.vent')}
          </th>
        </tr>
      </thead>
      <tbody>
        <For each={data.actions}>
          {(action) => {
            const moment = action.step / STEPS_PER_SECOND;
            return (
              <tr>
                <td class="n">{writeClock(moment)}</td>
                <td>
                  {plainNumber(action.number)}. {actionWords(action, props.debrief.nameOf)}
                </td>
                <td class="n">{inWords(writePressure(value('high', moment), units.pressure, 'high'))}</td>
                <td class="n">{inWords(writePressure(value('low', moment), units.pressure, 'low'))}</td>
                <td class="n">{inWords(writeMass(value('charge', moment), units.mass))}</td>
                <td class="n">{inWords(writeTemperature(value('vent', moment), units.temperature, 1))}</td>
              </tr>
            );
          }}
        </For>
      </tbody>
    </table>
  );
}
