/**
 * A small thermometer beside a place: its column stands higher the warmer it is (−20 to 100 °C), a star says that water
 * freezes there, and the number stands beside it. Bulb at (0, 0), column upward.
 */
import { type JSX, Show } from 'solid-js';

const FROM_K = 253.15;
const TO_K = 373.15;
const COLUMN = 30;
const FREEZING_K = 273.15;

/** Height of the column for a temperature. */
export function columnHeight(temperatureK: number): number {
  const share = (temperatureK - FROM_K) / (TO_K - FROM_K);
  return Math.round(Math.max(0.04, Math.min(1, share)) * COLUMN * 10) / 10;
}

export function Thermometer(props: {
  readonly x: number;
  readonly y: number;
  readonly temperatureK: number;
  readonly text: string;
}): JSX.Element {
  const height = (): number => columnHeight(props.temperatureK);
  return (
    <g transform={`translate(${props.x} ${props.y})`} class="thermo">
      <path d={`M-4 -4V${-COLUMN - 4}a4 4 0 0 1 8 0V-4a7 7 0 1 1-8 0z`} class="thermo-glass" />
      <circle cy="1.500" r="4.600" class="thermo-fill" />
      <rect x="-1.900" y={-height() - 3} width="3.800" height={height() + 5} class="thermo-fill" />
      <Show when={props.temperatureK < FREEZING_K}>
        <path d="M11 -26h10M13.500 -30.300l5 8.600M18.500 -30.300l-5 8.600" class="thermo-star" />
      </Show>
      <text x="11" y="4" class="l-s temp">
        {props.text}
      </text>
    </g>
  );
}
