/**
 * A round gauge as SVG: pressure scale outside, boiling temperature inside, needle, hub and number. View box 300 x 214,
 * centre (150, 136). Marks are made once per unit; a reading only turns the needle and changes the number. The needle lies
 * under the numerals, which have a halo, so that both can be read.
 */
import { createMemo, For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import type { DisplayUnits } from './displayUnits';
import { type GaugeReading, needleAngleDeg } from './gaugeReading';
import {
  type FaceKind,
  gaugeAngleDeg,
  SCALE_END_DEG,
  SCALE_START_DEG,
  type ScaleMark,
  scaleMarks,
  vacuumMarks,
} from './gaugeScale';
import { arcPath, type Centre, polarPoint, radialPath } from './polar';
import type { SaturationLine } from './saturation';
import { saturationMarks } from './saturationMarks';

export type Hub = 'low' | 'high' | 'charging';

export interface GaugeFaceProps {
  readonly face: FaceKind;
  readonly hub: Hub;
  readonly reading: GaugeReading;
  /** Where the needle stands, where it is followed closer than it is read; gauge pressure. */
  readonly needlePa?: number;
  readonly units: DisplayUnits;
  readonly saturation: SaturationLine | null;
  /** The refrigerant has been read off a label; otherwise the inner scale says "if". */
  readonly fluidKnown: boolean;
  /** Where a healthy car's needle would stand, from and to; null where that is not told. */
  readonly expected: { readonly fromGaugePa: number; readonly toGaugePa: number } | null;
  /** The needle is still on its way. */
  readonly isSettling?: boolean;
}

const CENTRE: Centre = { x: 150, y: 136 };
const TICK_INNER = { minor: 103.5, middle: 98, major: 94 } as const;
const FACE_FROM_DEG = 144.5;
const FACE_TO_DEG = 395.5;

const facePath = (): string => {
  const [right] = polarPoint(CENTRE, 128, FACE_TO_DEG);
  const left = polarPoint(CENTRE, 128, FACE_FROM_DEG);
  return `${arcPath(CENTRE, 128, FACE_FROM_DEG, FACE_TO_DEG)}Q${right - 3} 213 ${right - 12} 213H${left[0] + 12}Q${left[0] + 3} 213 ${left}Z`;
};

const tickClass = (mark: ScaleMark): string =>
  mark.size === 'minor' ? 'g-t' : mark.size === 'middle' ? 'g-t m' : 'g-t b';

function PressureMarks(props: { readonly face: FaceKind; readonly units: DisplayUnits }): JSX.Element {
  return (
    <For each={scaleMarks(props.face, props.units.pressure)}>
      {(mark) => {
        const [x, y] = polarPoint(CENTRE, 81, mark.angleDeg);
        return (
          <>
            <path class={tickClass(mark)} d={radialPath(CENTRE, 109, TICK_INNER[mark.size], mark.angleDeg)} />
            <Show when={mark.numeral}>
              <text class="g-n" classList={{ long: Number(mark.numeral) > 999 }} x={x} y={y + 4}>
                {mark.numeral}
              </text>
            </Show>
          </>
        );
      }}
    </For>
  );
}

function VacuumPart(props: { readonly units: DisplayUnits }): JSX.Element {
  const zero = gaugeAngleDeg('low', 0);
  const [unitX, unitY] = polarPoint(CENTRE, 80, SCALE_START_DEG + 17);
  return (
    <>
      <For each={vacuumMarks(props.units.pressure)}>
        {(mark) => {
          const [x, y] = polarPoint(CENTRE, 83, mark.angleDeg);
          return (
            <>
              <path
                class={mark.size === 'minor' ? 'g-t' : 'g-t m'}
                d={radialPath(CENTRE, 109, mark.size === 'minor' ? 100 : 95, mark.angleDeg)}
              />
              <Show when={mark.numeral}>
                <text class="g-n s" x={x} y={y + 3}>
                  {mark.numeral}
                </text>
              </Show>
            </>
          );
        }}
      </For>
      <Show when={props.units.pressure === 'psi'}>
        <text class="g-n s u" x={unitX + 4} y={unitY + 3}>
          {word('instrument.vacuumUnit')}
        </text>
      </Show>
      <path class="g-zero" d={radialPath(CENTRE, 112, 92, zero)} />
    </>
  );
}

function BoilingScale(props: {
  readonly face: FaceKind;
  readonly units: DisplayUnits;
  readonly line: SaturationLine;
}): JSX.Element {
  return (
    <>
      <path class="g-arc2" d={arcPath(CENTRE, 65, SCALE_START_DEG, SCALE_END_DEG)} />
      <For each={saturationMarks(props.face, props.units.temperature, props.line)}>
        {(mark) => {
          const [x, y] = polarPoint(CENTRE, 48, mark.angleDeg);
          const [sx, sy] = polarPoint(CENTRE, 35, mark.angleDeg + 1);
          return (
            <>
              <path
                class={mark.kind === 'round' ? 'g-t2' : 'g-t3'}
                d={radialPath(CENTRE, 65, mark.kind === 'round' ? 58 : 61.5, mark.angleDeg)}
              />
              <Show when={mark.freezing}>
                <path
                  class="g-t2"
                  d={`M${sx - 4} ${sy}h8M${sx - 2} ${sy - 3.5}l4 7M${sx + 2} ${sy - 3.5}l-4 7`}
                />
              </Show>
              <Show when={mark.numeral}>
                <text class="g-n2" classList={{ alt: mark.alternate }} x={x} y={y + 3.5}>
                  {mark.numeral}
                </text>
              </Show>
            </>
          );
        }}
      </For>
    </>
  );
}

/** Ring for the low side, square for the high side, pennant for the charging hose; each with its letter. */
function HubMark(props: { readonly hub: Hub }): JSX.Element {
  const letter = (): string => ({ low: 'L', high: 'H', charging: 'C' })[props.hub];
  return (
    <>
      <Show when={props.hub === 'low'}>
        <circle class="g-hub low" cx="150" cy="136" r="16" />
      </Show>
      <Show when={props.hub === 'high'}>
        <rect class="g-hub high" x="135" y="121" width="30" height="30" rx="4" />
      </Show>
      <Show when={props.hub === 'charging'}>
        <path class="g-hub charging" d="M133 121H160L170 136L160 151H133Z" />
      </Show>
      <text class={`g-hl ${props.hub}`} x="150" y="142.2">
        {letter()}
      </text>
    </>
  );
}

const BRACKET_INNER = 111;
const BRACKET_OUTER = 121;
const BRACKET_HOOK_DEG = 4;

/** A pair of brackets round the scale, open towards each other. */
function Brackets(props: { readonly fromDeg: number; readonly toDeg: number }): JSX.Element {
  const hook = (): number => Math.min(BRACKET_HOOK_DEG, (props.toDeg - props.fromDeg) / 2);
  const leg = (angleDeg: number): string => radialPath(CENTRE, BRACKET_INNER, BRACKET_OUTER, angleDeg);
  const foot = (fromDeg: number, toDeg: number): string => arcPath(CENTRE, BRACKET_OUTER, fromDeg, toDeg);
  return (
    <path
      class="g-br"
      d={`${leg(props.fromDeg)}${foot(props.fromDeg, props.fromDeg + hook())}${leg(props.toDeg)}${foot(props.toDeg - hook(), props.toDeg)}`}
    />
  );
}

export function GaugeFace(props: GaugeFaceProps): JSX.Element {
  const angle = createMemo(() => needleAngleDeg(props.face, props.needlePa ?? props.reading.gaugePressurePa));
  const unitSign = (): string => (props.units.temperature === 'degC' ? '°C' : '°F');
  const caption = ({ fluid }: SaturationLine): string => {
    const values = { unit: unitSign(), fluid };
    if (!props.fluidKnown) return word('instrument.boilsScaleIf', values);
    return props.face === 'high'
      ? word('instrument.condensesScale', values)
      : word('instrument.boilsScale', values);
  };
  return (
    <svg viewBox="0 0 300 214" aria-hidden="true" class="g-svg">
      <path class="g-face" d={facePath()} />
      <path class="g-arc" d={arcPath(CENTRE, 109, SCALE_START_DEG, SCALE_END_DEG)} />
      <Show when={props.face === 'low'}>
        <path class="g-vac" d={arcPath(CENTRE, 102, SCALE_START_DEG, gaugeAngleDeg('low', 0) - 1.2)} />
      </Show>
      <Show when={angle() !== null}>
        <path
          class="g-needle"
          d="M107 -1.16L0 -3.6L0 3.6L107 1.16Z"
          transform={`translate(150 136) rotate(${angle()})`}
        />
      </Show>
      <Show when={props.face === 'low'}>
        <VacuumPart units={props.units} />
      </Show>
      <PressureMarks face={props.face} units={props.units} />
      <Show when={props.saturation}>
        {(line) => (
          <>
            <BoilingScale face={props.face} units={props.units} line={line()} />
            <text class="g-cap" x="150" y="167">
              {props.isSettling ? word('instrument.settling') : caption(line())}
            </text>
          </>
        )}
      </Show>
      <Show when={props.expected}>
        {(span) => (
          <Brackets
            fromDeg={gaugeAngleDeg(props.face, span().fromGaugePa)}
            toDeg={gaugeAngleDeg(props.face, span().toGaugePa)}
          />
        )}
      </Show>
      <HubMark hub={props.hub} />
      <text class="g-big" x="150" y="201">
        {props.reading.number}
        <tspan class="g-unit" dx="5">
          {props.reading.unit}
        </tspan>
      </text>
    </svg>
  );
}
