/** The pressure-enthalpy diagram: dome, temperature lines, and the loop's four state points where p and h put them. */
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { type DisplayUnits, plainNumber, type TemperatureUnit, writeTemperature } from './displayUnits';
import { ISOTHERMS_K } from './isotherms';
import { NumberedPoint } from './loop/NumberedPoint';
import { Spot, type SpotChoice } from './loop/Spot';
import { endsOf, type SpotId } from './loop/spots';
import {
  cyclePath,
  domePath,
  ENTHALPY_MARKS_J_PER_KG,
  isKnown,
  isotherm,
  PH_FRAME,
  PH_HEIGHT,
  PH_WIDTH,
  phX,
  phY,
  pressureMarks,
  QUALITIES,
  qualityLine,
  type StatePoint,
  vapourLine,
} from './phGeometry';
import type { SaturationLine } from './saturation';

export interface PressureEnthalpyProps {
  readonly saturation: SaturationLine;
  /** Points 1 to 4 in the order of flow from the compressor's inlet. */
  readonly points: readonly StatePoint[];
  readonly units: DisplayUnits;
  /** The same points of a healthy car handled alike; none where that is not told. */
  readonly healthy?: readonly StatePoint[];
  /** None where the picture is only looked at. */
  readonly choice?: SpotChoice;
}

const BOTTOM = PH_HEIGHT - PH_FRAME.bottom;
const RIGHT = PH_WIDTH - PH_FRAME.right;

function Axes(props: { readonly unit: DisplayUnits['pressure'] }): JSX.Element {
  return (
    <>
      <For each={pressureMarks(props.unit)}>
        {({ pressurePa, number }) => (
          <>
            <path d={`M${PH_FRAME.left} ${phY(pressurePa)}H${RIGHT}`} class="c-gr" />
            <text x={PH_FRAME.left - 7} y={phY(pressurePa) + 4} text-anchor="end" class="c-ax">
              {String(number)}
            </text>
          </>
        )}
      </For>
      <For each={ENTHALPY_MARKS_J_PER_KG}>
        {(enthalpy) => (
          <>
            <path d={`M${phX(enthalpy)} ${PH_FRAME.top}V${BOTTOM}`} class="c-gr" />
            <text x={phX(enthalpy)} y={BOTTOM + 17} text-anchor="middle" class="c-ax">
              {plainNumber(enthalpy / 1000)}
            </text>
          </>
        )}
      </For>
      <text x={PH_FRAME.left} y={PH_HEIGHT - 6} class="c-ax">
        {word('instrument.diagram.enthalpy')}
      </text>
      <text x="6" y="15" class="c-ax">
        {word('instrument.diagram.pressure', { unit: props.unit })}
      </text>
    </>
  );
}

function Dome(props: { readonly saturation: SaturationLine; readonly unit: TemperatureUnit }): JSX.Element {
  return (
    <>
      <path d={domePath(props.saturation)} class="dome-tx" />
      <path d={domePath(props.saturation)} class="dome" />
      <For each={ISOTHERMS_K}>
        {(temperatureK) => (
          <Show when={isotherm(props.saturation, temperatureK)}>
            {(stretch) => (
              <>
                <path d={`M${stretch().left} ${stretch().y}H${stretch().right}`} class="isotherm" />
                <text x={stretch().left - 5} y={stretch().y + 4} text-anchor="end" class="c-ax">
                  {writeTemperature(temperatureK, props.unit).number}°
                </text>
              </>
            )}
          </Show>
        )}
      </For>
      <For each={ISOTHERMS_K}>
        {(temperatureK) => <path d={vapourLine(props.saturation, temperatureK)} class="isotherm" />}
      </For>
      <For each={QUALITIES}>
        {(quality) => (
          <>
            <path d={qualityLine(props.saturation, quality)} class="quality" />
            <text x={qualityX(props.saturation, quality)} y={BOTTOM - 5} class="c-q">
              {word('instrument.diagram.quality', { share: plainNumber(quality * 100) })}
            </text>
          </>
        )}
      </For>
      <text x={phX(196_000)} y={phY(3_600_000)} class="c-rg">
        {word('instrument.diagram.liquid')}
      </text>
      <text x={phX(325_000)} y={phY(600_000)} class="c-rg">
        {word('instrument.diagram.mixture')}
      </text>
      <text x={phX(458_000)} y={phY(230_000)} class="c-rg">
        {word('instrument.diagram.vapour')}
      </text>
    </>
  );
}

/** Where the line of a share of vapour stands at the foot of the picture. */
function qualityX(saturation: SaturationLine, quality: number): number {
  const i = saturation.pressurePa.findIndex((pressure) => pressure >= 100_000);
  const liquid = saturation.liquidEnthalpyJPerKg[i];
  return phX(liquid + quality * (saturation.vapourEnthalpyJPerKg[i] - liquid));
}

/** A healthy car's cycle, dotted, with hollow points of the same shapes. */
function Healthy(props: { readonly points: readonly StatePoint[] }): JSX.Element {
  return (
    <>
      <path d={cyclePath(props.points)} class="cycle-healthy" />
      <For each={props.points}>
        {(point, i) => (
          <Show
            when={i() === 0 || i() === 3}
            fallback={
              <rect
                x={phX(point.enthalpyJPerKg) - 4.5}
                y={phY(point.pressurePa) - 4.5}
                width="9"
                height="9"
                rx="1.500"
                class="pt-healthy"
              />
            }
          >
            <circle cx={phX(point.enthalpyJPerKg)} cy={phY(point.pressurePa)} r="4.800" class="pt-healthy" />
          </Show>
        )}
      </For>
    </>
  );
}

const STRETCHES: readonly SpotId[] = ['compressor', 'condenser', 'metering', 'evaporator'];

/** This car's cycle: four stretches and four points, all of which can be pressed. */
function Cycle(props: {
  readonly points: readonly StatePoint[];
  readonly choice: SpotChoice | undefined;
}): JSX.Element {
  const at = (number: number): StatePoint => props.points[number - 1];
  const stretch = (spot: SpotId): string => {
    const [from, to] = endsOf(spot) ?? [1, 1];
    return `M${phX(at(from).enthalpyJPerKg)} ${phY(at(from).pressurePa)}L${phX(at(to).enthalpyJPerKg)} ${phY(at(to).pressurePa)}`;
  };
  const sideOf = (spot: SpotId): string =>
    ({ condenser: 'cycle-high', evaporator: 'cycle-low' })[spot as string] ?? 'cycle';
  return (
    <>
      <path d={cyclePath(props.points)} class="cycle" />
      <For each={STRETCHES}>
        {(spot) => (
          <Spot id={spot} choice={props.choice}>
            <path d={stretch(spot)} class="stretch-hit" />
            <path d={stretch(spot)} class="stretch-ring" />
            <path d={stretch(spot)} class={sideOf(spot)} />
          </Spot>
        )}
      </For>
      <For each={[1, 2, 3, 4] as const}>
        {(number) => (
          <NumberedPoint
            x={phX(at(number).enthalpyJPerKg)}
            y={phY(at(number).pressurePa)}
            number={number}
            choice={props.choice}
          />
        )}
      </For>
    </>
  );
}

export function PressureEnthalpy(props: PressureEnthalpyProps): JSX.Element {
  const known = (): boolean => props.points.length === 4 && props.points.every(isKnown);
  return (
    <svg
      viewBox={`0 0 ${PH_WIDTH} ${PH_HEIGHT}`}
      class="phd"
      role={props.choice ? 'group' : 'img'}
      aria-label={word('instrument.diagram.label', { fluid: props.saturation.fluid })}
    >
      <Axes unit={props.units.pressure} />
      <Dome saturation={props.saturation} unit={props.units.temperature} />
      <Show when={props.healthy?.length === 4 && props.healthy.every(isKnown) && props.healthy}>
        {(points) => <Healthy points={points()} />}
      </Show>
      <Show when={known()}>
        <Cycle points={props.points} choice={props.choice} />
      </Show>
    </svg>
  );
}
