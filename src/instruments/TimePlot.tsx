/**
 * The debrief's plot: lanes with their own scales over one folded time axis, actions as numbered pins. As SVG, so that it
 * prints, scales and keeps its marks; the numbers stand in a table beside it.
 */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { plainNumber, writeClock } from './displayUnits';
import { type Fold, foldedTime, type TimeAxis } from './foldedTime';
import { isFlat } from './isFlat';
import { clusterPins, type PinCluster } from './pinPlaces';

export interface Lane {
  readonly name: string;
  readonly unit: string;
  readonly seconds: ArrayLike<number>;
  readonly values: ArrayLike<number>;
  readonly kind: 'high' | 'low' | 'plain';
  /** A level worth seeing, such as the label's charge. */
  readonly reference?: { readonly value: number; readonly text: string };
}

export interface Pin {
  readonly number: number;
  readonly seconds: number;
}

export interface TimePlotProps {
  readonly lanes: readonly Lane[];
  readonly pins: readonly Pin[];
  readonly endS: number;
  /** Moment looked at, if any. */
  readonly cursorS: number | null;
  readonly width?: number;
  readonly height?: number;
}

const LEFT = 48;
const RIGHT = 104;
const TOP = 44;
const GAP = 22;
const MARKS = 3;

interface Frame {
  readonly axis: TimeAxis;
  readonly x: (seconds: number) => number;
  readonly right: number;
}

const tenth = (value: number): number => Math.round(value * 10) / 10;

function laneScale(lane: Lane, top: number, bottom: number) {
  let low = lane.reference?.value ?? Number.POSITIVE_INFINITY;
  let high = lane.reference?.value ?? Number.NEGATIVE_INFINITY;
  for (let i = 0; i < lane.values.length; i++) {
    if (!Number.isFinite(lane.values[i])) continue;
    low = Math.min(low, lane.values[i]);
    high = Math.max(high, lane.values[i]);
  }
  if (!Number.isFinite(low)) return scaleLinear().domain([0, 1]).range([bottom, top]);
  if (lane.kind !== 'plain') low = Math.min(low, 0);
  return scaleLinear()
    .domain([low, Math.max(high, low + 1)])
    .nice(MARKS)
    .range([bottom, top]);
}

function tracePath(lane: Lane, x: (seconds: number) => number, y: (value: number) => number): string {
  const rows = Array.from({ length: lane.seconds.length }, (_, i) => i);
  return (
    line<number>()
      .defined((i) => Number.isFinite(lane.values[i]))
      .x((i) => tenth(x(lane.seconds[i])))
      .y((i) => tenth(y(lane.values[i])))(rows) ?? ''
  );
}

/** Round marks on the low side, square ones on the high side, so that the two are told apart without colour. */
function Marks(props: {
  readonly lane: Lane;
  readonly x: (s: number) => number;
  readonly y: (v: number) => number;
}): JSX.Element {
  const rows = (): number[] =>
    [0.12, 0.38, 0.62, 0.88]
      .map((share) => Math.floor(share * (props.lane.seconds.length - 1)))
      .filter((i) => Number.isFinite(props.lane.values[i]));
  return (
    <For each={rows()}>
      {(i) => {
        const x = tenth(props.x(props.lane.seconds[i]));
        const y = tenth(props.y(props.lane.values[i]));
        return props.lane.kind === 'high' ? (
          <rect x={x - 4.5} y={y - 4.5} width="9" height="9" class="dot-high" />
        ) : (
          <circle cx={x} cy={y} r="4.8" class="dot-low" />
        );
      }}
    </For>
  );
}

function LaneView(props: {
  readonly lane: Lane;
  readonly frame: Frame;
  readonly top: number;
  readonly height: number;
}): JSX.Element {
  const bottom = (): number => props.top + props.height;
  const scale = () => laneScale(props.lane, props.top, bottom());
  return (
    <g>
      <rect x={LEFT} y={props.top} width={props.frame.right - LEFT} height={props.height} class="frame" />
      <For each={props.frame.axis.folds}>
        {(fold) => (
          <rect
            x={props.frame.x(fold.fromS)}
            y={props.top}
            width={props.frame.x(fold.toS) - props.frame.x(fold.fromS)}
            height={props.height}
            class="fold"
          />
        )}
      </For>
      <For each={scale().ticks(MARKS)}>
        {(mark) => (
          <>
            <path class="c-gr" d={`M${LEFT} ${scale()(mark)}H${props.frame.right}`} />
            <text class="c-ax" x={LEFT - 6} y={scale()(mark) + 4} text-anchor="end">
              {plainNumber(mark, Number.isInteger(mark) ? 0 : 1)}
            </text>
          </>
        )}
      </For>
      <text class="c-lb" x={LEFT} y={props.top - 6}>
        {word('instrument.plot.lane', { name: props.lane.name, unit: props.lane.unit })}
      </text>
      <path class={`trace series-${props.lane.kind}`} d={tracePath(props.lane, props.frame.x, scale())} />
      <Show when={props.lane.kind !== 'plain'}>
        <Marks lane={props.lane} x={props.frame.x} y={scale()} />
      </Show>
      <Show when={props.lane.reference}>
        {(reference) => (
          <>
            <path d={`M${LEFT} ${scale()(reference().value)}H${props.frame.right}`} class="isotherm" />
            <text class="c-ax" x={props.frame.right + 8} y={scale()(reference().value) + 4}>
              {reference().text}
            </text>
          </>
        )}
      </Show>
    </g>
  );
}

function Pins(props: {
  readonly pins: readonly Pin[];
  readonly frame: Frame;
  readonly bottom: number;
  readonly cursorS: number | null;
}): JSX.Element {
  const clusters = (): PinCluster[] =>
    clusterPins(
      props.pins.map((pin) => props.frame.x(pin.seconds)),
      LEFT - 10,
      props.frame.right + 10,
    );
  const chosen = (pin: Pin): boolean => props.cursorS !== null && Math.abs(pin.seconds - props.cursorS) < 0.5;
  const numbers = ({ from, to }: PinCluster): string =>
    from === to
      ? String(props.pins[from].number)
      : word('instrument.plot.run', {
          from: String(props.pins[from].number),
          to: String(props.pins[to].number),
        });
  return (
    <>
      <For each={props.pins}>
        {(pin) => (
          <path
            class="pin-line"
            classList={{ on: chosen(pin) }}
            d={`M${props.frame.x(pin.seconds)} ${TOP - 20}V${props.bottom}`}
          />
        )}
      </For>
      <For each={clusters()}>
        {(cluster) => (
          <g>
            <rect
              class="pin"
              classList={{ on: props.pins.slice(cluster.from, cluster.to + 1).some(chosen) }}
              x={cluster.x - cluster.width / 2}
              y="2"
              width={cluster.width}
              height="19"
              rx="4"
            />
            <text class="c-pin" x={cluster.x} y="16">
              {numbers(cluster)}
            </text>
          </g>
        )}
      </For>
    </>
  );
}

/** How much of a wait is squeezed into a fold, written up along it. */
function FoldWords(props: {
  readonly fold: Fold;
  readonly frame: Frame;
  readonly bottom: number;
}): JSX.Element {
  const minutes = (): string => plainNumber((props.fold.toS - props.fold.fromS) / 60);
  const x = (): number => (props.frame.x(props.fold.fromS) + props.frame.x(props.fold.toS)) / 2 + 4;
  return (
    <text
      class="c-ax"
      text-anchor="middle"
      transform={`translate(${x()} ${(TOP + props.bottom) / 2}) rotate(-90)`}
    >
      {word('instrument.plot.fold', { minutes: minutes() })}
    </text>
  );
}

export function TimePlot(props: TimePlotProps): JSX.Element {
  const width = (): number => props.width ?? 900;
  const height = (): number => props.height ?? 470;
  const frame = (): Frame => {
    const axis = foldedTime(
      props.endS,
      props.pins.map((pin) => pin.seconds),
      (fromS, toS) => props.lanes.every((lane) => isFlat(lane, fromS, toS)),
    );
    const right = width() - RIGHT;
    return { axis, right, x: (seconds) => tenth(LEFT + axis.share(seconds) * (right - LEFT)) };
  };
  const bottom = (): number => height() - 24;
  const room = (): number =>
    (bottom() - TOP - GAP * (props.lanes.length - 1)) /
    props.lanes.reduce((sum, lane) => sum + weight(lane), 0);
  const tops = (): number[] => {
    let top = TOP;
    return props.lanes.map((lane) => {
      const mine = top;
      top += room() * weight(lane) + GAP;
      return mine;
    });
  };
  const label = (): string =>
    word('instrument.plot.label', {
      lanes: props.lanes.map((lane) => lane.name).join(', '),
      minutes: plainNumber(props.endS / 60),
      count: plainNumber(props.pins.length),
    });
  const wholeMinutes = (): boolean => frame().axis.marks.every((seconds) => seconds % 60 === 0);
  return (
    <svg viewBox={`0 0 ${width()} ${height()}`} class="tplot" role="img" aria-label={label()}>
      <For each={props.lanes}>
        {(lane, i) => (
          <LaneView lane={lane} frame={frame()} top={tops()[i()]} height={room() * weight(lane)} />
        )}
      </For>
      <For each={frame().axis.folds}>
        {(fold) => <FoldWords fold={fold} frame={frame()} bottom={bottom()} />}
      </For>
      <Pins pins={props.pins} frame={frame()} bottom={bottom()} cursorS={props.cursorS} />
      <Show when={props.cursorS !== null}>
        <path class="cursor-line" d={`M${frame().x(props.cursorS ?? 0)} ${TOP - 8}V${bottom()}`} />
      </Show>
      <For each={frame().axis.marks}>
        {(seconds) => (
          <text class="c-ax" x={frame().x(seconds)} y={height() - 6} text-anchor="middle">
            {wholeMinutes()
              ? word('instrument.plot.minute', { minute: plainNumber(seconds / 60) })
              : writeClock(seconds)}
          </text>
        )}
      </For>
    </svg>
  );
}

/** Pressures get more room than charge and vent. */
function weight(lane: Lane): number {
  return lane.kind === 'high' ? 1.5 : lane.kind === 'low' ? 1.2 : 0.95;
}
