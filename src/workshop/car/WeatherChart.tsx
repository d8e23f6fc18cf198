/**
 * One side's pressure over the air outside: a sound car with its brackets as a hatched band, this car as a line with the
 * side's own mark, and where the scenario's weather lies. As SVG; the numbers stand in a table below it.
 */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { For, type JSX } from 'solid-js';
import {
  type DisplayUnits,
  inWords,
  paPerUnit,
  plainNumber,
  writePressure,
} from '../../instruments/displayUnits';
import { expectedWindow } from '../../suspects/expectedWindow';
import { valueInUnit } from '../../units/format';
import { word } from '../../words/words';
import type { Swing } from './carRun';
import type { CarsAt } from './carStory';

export interface WeatherChartProps {
  readonly side: 'low' | 'high';
  /** By rising temperature; two at least. */
  readonly band: readonly CarsAt[];
  /** Weather of the job over its seeds. */
  readonly jobK: readonly [from: number, to: number];
  readonly units: DisplayUnits;
}

const WIDTH = 340;
const HEIGHT = 176;
const LEFT = 44;
const RIGHT = 12;
const TOP = 20;
const BOTTOM = 32;
const MARKS_Y = 4;
const MARKS_X = 6;
/** The strip of a job in one weather is still seen. */
const LEAST_STRIP = 6;

const tenth = (value: number): number => Math.round(value * 10) / 10;

export function WeatherChart(props: WeatherChartProps): JSX.Element {
  const temperature = (kelvin: number): number => valueInUnit(kelvin, props.units.temperature);
  const pressure = (pa: number): number => pa / paPerUnit[props.units.pressure];
  const windowOf = (at: CarsAt) =>
    expectedWindow(at.sound.low.meanPa, at.sound.high.meanPa, at.sound.ventK)[props.side];
  const ownOf = (at: CarsAt): Swing => at.own[props.side];
  const x = () => {
    const [first, last] = [props.band[0], props.band[props.band.length - 1]];
    return scaleLinear()
      .domain([temperature(first.ambientK), temperature(last.ambientK)])
      .range([LEFT, WIDTH - RIGHT]);
  };
  const y = () => {
    const ends = props.band.flatMap((at) => [windowOf(at).toGaugePa, ownOf(at).mostPa, ownOf(at).leastPa]);
    return scaleLinear()
      .domain([Math.min(0, pressure(Math.min(...ends))), pressure(Math.max(...ends))])
      .nice(MARKS_Y)
      .range([HEIGHT - BOTTOM, TOP]);
  };
  const path = (of: (at: CarsAt) => number): string =>
    line<CarsAt>()
      .x((at) => tenth(x()(temperature(at.ambientK))))
      .y((at) => tenth(y()(pressure(of(at)))))([...props.band]) ?? '';
  const bandPath = (): string => {
    const upper = path((at) => windowOf(at).toGaugePa);
    const lower = line<CarsAt>()
      .x((at) => tenth(x()(temperature(at.ambientK))))
      .y((at) => tenth(y()(pressure(windowOf(at).fromGaugePa))))([...props.band].reverse());
    return `${upper}L${(lower ?? '').slice(1)}Z`;
  };
  const strip = () => {
    const [from, to] = props.jobK.map((kelvin) => x()(temperature(kelvin)));
    const width = Math.max(LEAST_STRIP, to - from);
    const left = Math.max(LEFT, Math.min(WIDTH - RIGHT - width, (from + to - width) / 2));
    return { x: tenth(left), width: tenth(width), middle: tenth(left + width / 2) };
  };
  const side = (): string =>
    props.side === 'low' ? word('workshopCar.gauge.low') : word('workshopCar.gauge.high');
  const said = (): string => {
    const written = (pa: number): string => inWords(writePressure(pa, props.units.pressure, props.side));
    const [first, last] = [props.band[0], props.band[props.band.length - 1]];
    return word('workshopCar.band.said', {
      side: side(),
      ownFrom: written(ownOf(first).meanPa),
      ownTo: written(ownOf(last).meanPa),
      soundFrom: written(first.sound[props.side].meanPa),
      soundTo: written(last.sound[props.side].meanPa),
    });
  };
  const unitSign = (): string => (props.units.temperature === 'degC' ? '°C' : '°F');
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} class={`wc-chart ${props.side}`} role="img" aria-label={said()}>
      <rect class="job" x={strip().x} y={TOP} width={strip().width} height={HEIGHT - BOTTOM - TOP} />
      <For each={y().ticks(MARKS_Y)}>
        {(value) => (
          <>
            <path class="grid" d={`M${LEFT} ${tenth(y()(value))}H${WIDTH - RIGHT}`} />
            <text class="num" x={LEFT - 5} y={tenth(y()(value)) + 4} text-anchor="end">
              {plainNumber(value)}
            </text>
          </>
        )}
      </For>
      <For each={x().ticks(MARKS_X)}>
        {(value) => (
          <text class="num" x={tenth(x()(value))} y={HEIGHT - BOTTOM + 15} text-anchor="middle">
            {plainNumber(value)}
          </text>
        )}
      </For>
      <text class="num ax" x={(LEFT + WIDTH - RIGHT) / 2} y={HEIGHT - 3} text-anchor="middle">
        {word('workshopCar.band.axis', { unit: unitSign() })}
      </text>
      <text class="num ax" x={LEFT} y={TOP - 8} text-anchor="start">
        {`${side()}, ${props.units.pressure}`}
      </text>
      <path class="sound-band" d={bandPath()} />
      <path class="sound" d={path((at) => at.sound[props.side].meanPa)} />
      <For each={props.band}>
        {(at) => {
          const at0 = (): number => tenth(x()(temperature(at.ambientK)));
          const level = (pa: number): number => tenth(y()(pressure(pa)));
          return (
            <path class="swing" d={`M${at0()} ${level(ownOf(at).mostPa)}V${level(ownOf(at).leastPa)}`} />
          );
        }}
      </For>
      <path class="own" d={path((at) => ownOf(at).meanPa)} />
      <For each={props.band}>
        {(at) => {
          const at0 = (): number => tenth(x()(temperature(at.ambientK)));
          const level = (): number => tenth(y()(pressure(ownOf(at).meanPa)));
          return props.side === 'high' ? (
            <rect class="dot-high" x={at0() - 4} y={level() - 4} width="8" height="8" />
          ) : (
            <circle class="dot-low" cx={at0()} cy={level()} r="4.3" />
          );
        }}
      </For>
    </svg>
  );
}
