/** The pressure-enthalpy diagram: dome, temperature lines, and the loop's four state points where p and h put them. */
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { type DisplayUnits, plainNumber, type TemperatureUnit, writeTemperature } from './displayUnits';
import {
  cyclePath,
  domePath,
  ENTHALPY_MARKS_J_PER_KG,
  ISOTHERMS_K,
  isKnown,
  isotherm,
  PH_FRAME,
  PH_HEIGHT,
  PH_WIDTH,
  phX,
  phY,
  pressureMarks,
  type StatePoint,
} from './phGeometry';
import type { SaturationLine } from './saturation';

export interface PressureEnthalpyProps {
  readonly saturation: SaturationLine;
  /** Points 1 to 4 in the order of flow from the compressor's inlet. */
  readonly points: readonly StatePoint[];
  readonly units: DisplayUnits;
  /** The same points of a healthy car handled alike; none where that is not told. */
  readonly healthy?: readonly StatePoint[];
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

/** Round marks on the low side, square ones on the high side, numbered as in the table. */
function Point(props: { readonly point: StatePoint; readonly number: number }): JSX.Element {
  const x = (): number => phX(props.point.enthalpyJPerKg);
  const y = (): number => phY(props.point.pressurePa);
  const low = (): boolean => props.number === 1 || props.number === 4;
  return (
    <g data-point={props.number} transform={`translate(${x()} ${y()})`}>
      <Show
        when={low()}
        fallback={<rect x="-11.5" y="-11.5" width="23" height="23" rx="3" class="pt-high" />}
      >
        <circle r="12" class="pt-low" />
      </Show>
      <text y="5" class="c-pt">
        {props.number}
      </text>
    </g>
  );
}

export function PressureEnthalpy(props: PressureEnthalpyProps): JSX.Element {
  const known = (): boolean => props.points.length === 4 && props.points.every(isKnown);
  const at = (i: number): StatePoint => props.points[i];
  const stretch = (from: number, to: number): string =>
    `M${phX(at(from).enthalpyJPerKg)} ${phY(at(from).pressurePa)}L${phX(at(to).enthalpyJPerKg)} ${phY(at(to).pressurePa)}`;
  return (
    <svg
      viewBox={`0 0 ${PH_WIDTH} ${PH_HEIGHT}`}
      class="phd"
      role="img"
      aria-label={word('instrument.diagram.label', { fluid: props.saturation.fluid })}
    >
      <Axes unit={props.units.pressure} />
      <Dome saturation={props.saturation} unit={props.units.temperature} />
      <Show when={props.healthy?.length === 4 && props.healthy.every(isKnown) && props.healthy}>
        {(points) => <path d={cyclePath(points())} class="cycle-healthy" />}
      </Show>
      <Show when={known()}>
        <path d={cyclePath(props.points)} class="cycle" />
        <path d={stretch(3, 0)} class="cycle-low" />
        <path d={stretch(2, 1)} class="cycle-high" />
        <For each={[0, 1, 2, 3]}>{(i) => <Point point={at(i)} number={i + 1} />}</For>
      </Show>
    </svg>
  );
}
