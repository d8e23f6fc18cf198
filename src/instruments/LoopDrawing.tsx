/**
 * The loop cut open: low side in a solid frame, high side in a dashed one, phases as textures, warmth as tint and
 * thermometers, flow as arrows; points 1 to 4 where the diagram and the table have them. View box 680 x 440.
 */
import { createMemo, For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { type DisplayUnits, inWords, plainNumber, writeTemperature } from './displayUnits';
import { Coil } from './loop/Coil';
import { Compressor, Metering } from './loop/Devices';
import { Flow, type FlowWay } from './loop/Flow';
import { Label } from './loop/Label';
import { type Cell, type HealthyLoop, isSameBuild, type LoopState } from './loop/loopState';
import { NumberedPoint } from './loop/NumberedPoint';
import { Pipe } from './loop/Pipe';
import { Pot } from './loop/Pot';
import { firstCell } from './loop/phases';
import { Spot, type SpotChoice } from './loop/Spot';
import { Thermometer } from './loop/Thermometer';
import { asPath, type LoopWays, type Way, waysOf } from './loop/ways';

export interface LoopDrawingProps {
  readonly state: LoopState;
  readonly healthy: HealthyLoop;
  readonly units: DisplayUnits;
  /** Pressures of the two sides, written. */
  readonly low: string;
  readonly high: string;
  /** The clock runs. */
  readonly isRunning: boolean;
  readonly choice: SpotChoice;
}

const PASS_HEIGHT = 20;
const EVAPORATOR_X = 46;
const CONDENSER_X = 442;
const COIL_WIDTH = 170;
const CONDENSER_Y = 196;
const CONDENSER_STEP = 30;

function Frames(props: { readonly low: string; readonly high: string }): JSX.Element {
  return (
    <>
      <rect x="4" y="4" width="330" height="432" rx="14" class="zone low" />
      <rect x="346" y="4" width="330" height="432" rx="14" class="zone high" />
      <circle cx="30" cy="30" r="13" class="pt-low" />
      <text x="30" y="35" class="c-pt">
        L
      </text>
      <text x="50" y="36" class="l-z low">
        {word('instrument.loop.sidePressure', { side: word('instrument.side.low'), reading: props.low })}
      </text>
      <text x="630" y="36" class="l-z high" text-anchor="end">
        {word('instrument.loop.sidePressure', { side: word('instrument.side.high'), reading: props.high })}
      </text>
      <rect x="637" y="17" width="26" height="26" rx="3" class="pt-high" />
      <text x="650" y="35" class="c-pt">
        H
      </text>
    </>
  );
}

const OFF: Cell = { liquidRatio: 0, temperatureK: Number.NaN };
const endOf = (cells: readonly Cell[]): Cell => cells[cells.length - 1] ?? OFF;

function Pipes(props: { readonly state: LoopState; readonly ways: LoopWays }): JSX.Element {
  const run = (way: Way | null, width: number, cell: () => Cell): JSX.Element => (
    <Show when={way}>{(corners) => <Pipe d={asPath(corners())} width={width} cell={cell()} />}</Show>
  );
  return (
    <>
      {run(props.ways.rearOut, 13, () => endOf(props.state.rear))}
      {run(props.ways.rearIn, 7, () => props.state.rear[0] ?? OFF)}
      {run(props.ways.wet, 15, () => endOf(props.state.evaporator))}
      {run(props.ways.suction, 15, () => props.state.suction)}
      {run(props.ways.discharge, 10, () => props.state.discharge)}
      <For each={props.ways.liquid}>
        {(way) => <Pipe d={asPath(way)} width={7} cell={props.state.liquid} />}
      </For>
      {run(props.ways.metered, 9, () => props.state.evaporator[0] ?? OFF)}
    </>
  );
}

function Coils(
  props: LoopDrawingProps & { readonly ways: LoopWays; readonly span: (cells: readonly Cell[]) => string },
): JSX.Element {
  const state = (): LoopState => props.state;
  return (
    <>
      <Spot id="evaporator" choice={props.choice}>
        <rect
          x={EVAPORATOR_X - 30}
          y={props.ways.coilY + 3 * props.ways.coilStep - 8}
          width={COIL_WIDTH + 60}
          height={-3 * props.ways.coilStep + PASS_HEIGHT + 16}
          rx="16"
          class="spot-ring"
        />
        <Coil
          x={EVAPORATOR_X}
          y={props.ways.coilY}
          step={props.ways.coilStep}
          width={COIL_WIDTH}
          height={PASS_HEIGHT - (state().build.hasRear ? 2 : 0)}
          cells={state().evaporator}
          begins="right"
          healthyFrom={firstCell(props.healthy.evaporator, 'vapour')}
        />
        <Label x={EVAPORATOR_X} y={props.ways.coilY + 41} text={word('instrument.loop.evaporator')} />
        <Label x={EVAPORATOR_X} y={props.ways.coilY + 61} text={props.span(state().evaporator)} small />
      </Spot>
      <Show when={state().build.hasRear}>
        <Coil
          x={62}
          y={377}
          step={-26}
          width={126}
          height={18}
          cells={state().rear}
          begins="left"
          healthyFrom={null}
        />
        <Label x={64} y={344} text={word('instrument.loop.rear')} />
        <Label x={200} y={384} text={props.span(state().rear)} small />
      </Show>
      <Spot id="condenser" choice={props.choice}>
        <rect
          x={CONDENSER_X - 30}
          y={CONDENSER_Y - 8}
          width={COIL_WIDTH + 60}
          height={3 * CONDENSER_STEP + PASS_HEIGHT + 16}
          rx="16"
          class="spot-ring"
        />
        <Coil
          x={CONDENSER_X}
          y={CONDENSER_Y}
          step={CONDENSER_STEP}
          width={COIL_WIDTH}
          height={PASS_HEIGHT}
          cells={state().condenser}
          begins="right"
          healthyFrom={firstCell(props.healthy.condenser, 'liquid')}
        />
        <Label x={CONDENSER_X} y={160} text={word('instrument.loop.condenser')} />
        <Label x={CONDENSER_X} y={180} text={props.span(state().condenser)} small />
      </Spot>
    </>
  );
}

function KeptLiquid(props: { readonly state: LoopState; readonly healthy: number }): JSX.Element {
  const pot = (): Cell => props.state.pot;
  return (
    <>
      <Show when={props.state.build.pot === 'accumulator'}>
        <Pot x={168} y={94} width={76} height={80} round={26} cell={pot()} healthy={props.healthy} />
        <Label x={44} y={106} text={word('instrument.loop.accumulator')} />
      </Show>
      <Show when={props.state.build.pot === 'receiver'}>
        <Pot x={614} y={308} width={52} height={64} round={16} cell={pot()} healthy={props.healthy} />
        <Label x={606} y={336} anchor="end" text={word('instrument.loop.receiver')} />
      </Show>
      <Show when={props.state.build.pot === 'onCondenser'}>
        <path d="M610 286H628M610 318H628V340" class="wall" stroke-width="2.600" />
        <Pot x={626} y={276} width={28} height={88} round={13} cell={pot()} healthy={props.healthy} />
        <Label x={616} y={344} anchor="end" text={word('instrument.loop.drierOnCondenser')} />
      </Show>
    </>
  );
}

/** The four points, each with its thermometer. */
function Points(props: LoopDrawingProps & { readonly meterY: number }): JSX.Element {
  const places = (): readonly (readonly [x: number, y: number, x: number, y: number])[] => [
    [266, 74, 262, 134],
    [548, 74, 540, 132],
    props.state.build.hasRear ? [470, 370, 462, 346] : [436, props.meterY, 428, props.meterY - 24],
    [276, props.meterY, 268, props.meterY - 24],
  ];
  const temperature = (kelvin: number): string =>
    Number.isFinite(kelvin) ? inWords(writeTemperature(kelvin, props.units.temperature)) : '';
  return (
    <For each={[0, 1, 2, 3]}>
      {(i) => (
        <>
          <Thermometer
            x={places()[i][2]}
            y={places()[i][3]}
            temperatureK={props.state.points[i].temperatureK}
            text={temperature(props.state.points[i].temperatureK)}
          />
          <NumberedPoint
            x={places()[i][0]}
            y={places()[i][1]}
            number={(i + 1) as 1 | 2 | 3 | 4}
            choice={props.choice}
          />
        </>
      )}
    </For>
  );
}

export function LoopDrawing(props: LoopDrawingProps): JSX.Element {
  const build = createMemo(() => props.state.build, undefined, { equals: isSameBuild });
  const ways = createMemo(() => waysOf(build()));
  const span = (cells: readonly Cell[]): string => {
    const written = (cell: Cell) => writeTemperature(cell.temperatureK, props.units.temperature);
    const first = cells[0];
    if (!first || Number.isNaN(first.temperatureK)) return '';
    const [from, to] = [written(first), written(endOf(cells))];
    return word('instrument.loop.fromTo', { from: from.number, to: inWords(to) });
  };
  const flows = (): FlowWay[] => {
    const { pumpedKgPerS, meteredKgPerS, rearKgPerS } = props.state;
    const all: [Way | null, number][] = [
      [ways().wet, pumpedKgPerS],
      [ways().suction, pumpedKgPerS],
      [ways().discharge, pumpedKgPerS],
      [ways().liquid[0], meteredKgPerS + rearKgPerS],
      [ways().metered, meteredKgPerS],
      [ways().rearIn, rearKgPerS],
    ];
    return all.flatMap(([way, flowKgPerS]) => (way ? [{ way, flowKgPerS }] : []));
  };
  const flowWords = (): string =>
    word('instrument.loop.flow', {
      grams: plainNumber(Math.max(0, props.state.meteredKgPerS + props.state.rearKgPerS) * 1000),
    });
  return (
    <svg viewBox="0 0 680 440" class="loopd" role="group" aria-label={word('instrument.loop.label')}>
      <g color="var(--ink)">
        <Frames low={props.low} high={props.high} />
        <Pipes state={props.state} ways={ways()} />
        <Coils {...props} ways={ways()} span={span} />
        <KeptLiquid state={props.state} healthy={props.healthy.pot} />
        <Flow ways={flows()} isRunning={props.isRunning} />
        <Compressor choice={props.choice} />
        <Spot id="metering" choice={props.choice}>
          <rect x="302" y={ways().meterY - 32} width="76" height="50" rx="14" class="spot-ring" />
          <Metering kind={props.state.build.metering} y={ways().meterY} />
          <Label
            x={340}
            y={ways().meterY + 34}
            anchor="middle"
            text={
              props.state.build.metering === 'orifice'
                ? word('instrument.loop.orificeTube')
                : word('instrument.loop.expansionValve')
            }
          />
        </Spot>
        <Show when={props.state.build.hasRear}>
          <Metering kind="valve" y={ways().rearMeterY} />
        </Show>
        <Label x={540} y={ways().liquid.length > 1 ? 394 : 410} anchor="middle" text={flowWords()} small />
        <Points {...props} meterY={ways().meterY} />
      </g>
    </svg>
  );
}
