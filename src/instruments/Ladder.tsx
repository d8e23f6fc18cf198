/**
 * The straight form of a gauge for narrow places and print: a scale from left to right with the side's badge as its
 * pointer; a vacuum stands left of nought. View box 300 x 62, axis at y 26.
 */
import { For, type JSX, Show } from 'solid-js';
import { type PressureUnit, paPerUnit } from './displayUnits';
import type { Hub } from './GaugeFace';
import { type FaceKind, vacuumMarks } from './gaugeScale';

export interface LadderProps {
  readonly face: FaceKind;
  readonly hub: Hub;
  /** Gauge pressure in Pa; NaN when not coupled. */
  readonly gaugePressurePa: number;
  readonly unit: PressureUnit;
  /** As on the round face. */
  readonly expected: { readonly fromGaugePa: number; readonly toGaugePa: number } | null;
}

const WIDTH = 300;
const LEFT = 12;
const RIGHT = 14;
/** The low side's scale begins with a vacuum, in the part of its width that the round face gives it. */
const VACUUM_PX = 44;
const VACUUM_PA = 100_000;
/** Keeps the first numeral inside the picture. */
const NUMERAL_IN = 4;

const SCALES: Readonly<
  Record<FaceKind, Readonly<Record<PressureUnit, readonly [end: number, major: number, minor: number]>>>
> = {
  low: { psi: [120, 20, 10], kPa: [800, 200, 100], bar: [8, 2, 1] },
  high: { psi: [450, 100, 50], kPa: [3000, 1000, 500], bar: [30, 10, 5] },
};

const zeroX = (face: FaceKind): number => (face === 'low' ? LEFT + VACUUM_PX : LEFT);

/** x of a gauge pressure on the scale of a face, held between its ends. */
export function ladderX(face: FaceKind, gaugePa: number, unit: PressureUnit): number {
  const zero = zeroX(face);
  const value = gaugePa / paPerUnit[unit];
  const [end] = SCALES[face][unit];
  const x =
    value < 0
      ? zero - (zero - LEFT) * Math.min(1, -gaugePa / VACUUM_PA)
      : zero + Math.min(1, value / end) * (WIDTH - RIGHT - zero);
  return Math.round(x * 10) / 10;
}

export function Ladder(props: LadderProps): JSX.Element {
  const scale = (): readonly [number, number, number] => SCALES[props.face][props.unit];
  const marks = (): number[] =>
    Array.from({ length: Math.floor(scale()[0] / scale()[2]) + 1 }, (_, i) => i * scale()[2]);
  const xOf = (gaugePa: number): number => ladderX(props.face, gaugePa, props.unit);
  const vacuum = () => (props.face === 'low' ? vacuumMarks(props.unit) : []);
  const vacuumX = (i: number): number => LEFT + (VACUUM_PX * i) / vacuum().length;
  const pointerX = (): number => xOf(props.gaugePressurePa);
  const coupled = (): boolean => !Number.isNaN(props.gaugePressurePa);
  const letter = (): string => ({ low: 'L', high: 'H', charging: 'C' })[props.hub];
  return (
    <svg viewBox="0 -12 300 62" class="ladder" aria-hidden="true">
      <path d={`M${LEFT} 26H${WIDTH - RIGHT}`} class="g-arc" />
      <For each={marks()}>
        {(value) => {
          const x = xOf(value * paPerUnit[props.unit]);
          const major = value % scale()[1] === 0;
          return (
            <>
              <path class={major ? 'g-t b' : 'g-t'} d={`M${x} 26v${major ? 9 : 5}`} />
              <Show when={major}>
                <text class="g-n" x={x} y="48">
                  {value}
                </text>
              </Show>
            </>
          );
        }}
      </For>
      <For each={vacuum()}>
        {(mark, i) => (
          <>
            <path class="g-t" d={`M${vacuumX(i())} 26v${mark.numeral === null ? 5 : 9}`} />
            <Show when={mark.numeral !== null}>
              <text class="g-n" x={vacuumX(i()) + NUMERAL_IN} y="48">
                {mark.numeral}
              </text>
            </Show>
          </>
        )}
      </For>
      <Show when={props.expected}>
        {(span) => (
          <path
            class="g-br"
            d={`M${xOf(span().fromGaugePa) + 4} 16h-4v8h4M${xOf(span().toGaugePa) - 4} 16h4v8h-4`}
          />
        )}
      </Show>
      <Show when={coupled()}>
        <g class={`ladder-pointer ${props.hub}`} transform={`translate(${pointerX()} 0)`}>
          <path d="M0 27V2" />
          <Show when={props.hub === 'high'} fallback={<circle cx="0" cy="-3" r="8" />}>
            <rect x="-8" y="-11" width="16" height="16" rx="2" />
          </Show>
          <text x="0" y="1.6" class="c-pt">
            {letter()}
          </text>
        </g>
      </Show>
    </svg>
  );
}
