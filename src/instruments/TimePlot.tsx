/**
 * The debrief's plot: lanes with their own scales over one folded time axis, actions as numbered pins. As SVG, so that it
 * prints, scales and keeps its marks; the numbers stand in a table beside it.
 */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { createMemo, For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { plainNumber, writeClock } from './displayUnits';
import type { TimeAxis } from './foldedTime';
import { FoldWords, type Pin, Pins, type PlotFrame, TOP } from './TimePlotPins';

export interface Lane {
  readonly name: string;
  readonly unit: string;
  readonly seconds: ArrayLike<number>;
  readonly values: ArrayLike<number>;
  readonly kind: 'high' | 'low' | 'plain';
  /** The same of a session tried otherwise, as far as it has come. */
  readonly other?: Pick<Lane, 'seconds' | 'values'>;
  /** What the scale spans at least, or a level line would look like news. */
  readonly leastSpan?: number;
  /** A level worth seeing, such as the label's charge. */
  readonly reference?: { readonly value: number; readonly text: string };
}

export interface TimePlotProps {
  readonly lanes: readonly Lane[];
  readonly pins: readonly Pin[];
  /** From `plotAxis`, the same for all plots of one session. */
  readonly axis: TimeAxis;
  /** Moment looked at, if any. */
  readonly cursorS: number | null;
  /** Where a session tried otherwise parts from this one. */
  readonly apartS?: number | null;
  readonly width?: number;
  readonly height?: number;
}

const LEFT = 48;
/** Room for the words of a level at the right; a narrow plot writes them inside. */
const RIGHT = 104;
const NARROW = 500;
const NARROW_RIGHT = 22;
const GAP = 22;
const MARKS = 3;
/** Width of a mark's words with a gap, and height of a line of them. */
const MARK_ROOM = 52;
const LEAST_MARK_ROOM = 14;

const tenth = (value: number): number => Math.round(value * 10) / 10;

function laneScale(lane: Lane, top: number, bottom: number) {
  let low = lane.reference?.value ?? Number.POSITIVE_INFINITY;
  let high = lane.reference?.value ?? Number.NEGATIVE_INFINITY;
  for (const values of [lane.values, lane.other?.values ?? []])
    for (let i = 0; i < values.length; i++) {
      if (!Number.isFinite(values[i])) continue;
      low = Math.min(low, values[i]);
      high = Math.max(high, values[i]);
    }
  if (!Number.isFinite(low)) return scaleLinear().domain([0, 1]).range([bottom, top]);
  if (lane.kind !== 'plain') low = Math.min(low, 0);
  const missing = Math.max(0, (lane.leastSpan ?? 1) - (high - low));
  const below = Math.min(missing / 2, Math.max(0, low));
  return scaleLinear()
    .domain([low - below, high + missing - below])
    .nice(MARKS)
    .range([bottom, top]);
}

/** Marks of a scale, every second one where all would stand too close. */
function spacedMarks(scale: ReturnType<typeof laneScale>): number[] {
  const marks = scale.ticks(MARKS);
  const apart = Math.abs(scale(marks[1] ?? 0) - scale(marks[0] ?? 0));
  return apart < LEAST_MARK_ROOM ? marks.filter((_, at) => at % 2 === 0) : marks;
}

function tracePath(
  lane: Pick<Lane, 'seconds' | 'values'>,
  x: (seconds: number) => number,
  y: (value: number) => number,
): string {
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
        const x = (): number => tenth(props.x(props.lane.seconds[i]));
        const y = (): number => tenth(props.y(props.lane.values[i]));
        return props.lane.kind === 'high' ? (
          <rect x={x() - 4.5} y={y() - 4.5} width="9" height="9" class="dot-high" />
        ) : (
          <circle cx={x()} cy={y()} r="4.8" class="dot-low" />
        );
      }}
    </For>
  );
}

/** What a level is: beside the plot, or on its line where there is no room beside it. */
function LevelWords(props: {
  readonly text: string;
  readonly y: number;
  readonly frame: PlotFrame;
  readonly top: number;
}): JSX.Element {
  return (
    <Show
      when={!props.frame.isNarrow}
      fallback={
        <text
          class="c-ax"
          x={props.frame.right - 5}
          y={props.y + (props.y - props.top < 18 ? 14 : -5)}
          text-anchor="end"
        >
          {props.text}
        </text>
      }
    >
      <text class="c-ax" x={props.frame.right + 8} y={props.y + 4}>
        {props.text}
      </text>
    </Show>
  );
}

function LaneView(props: {
  readonly lane: Lane;
  readonly frame: PlotFrame;
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
      <For each={spacedMarks(scale())}>
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
      <Show when={props.lane.other}>
        {(other) => (
          <path
            class={`trace other series-${props.lane.kind}`}
            d={tracePath(other(), props.frame.x, scale())}
          />
        )}
      </Show>
      <path class={`trace series-${props.lane.kind}`} d={tracePath(props.lane, props.frame.x, scale())} />
      <Show when={props.lane.kind !== 'plain'}>
        <Marks lane={props.lane} x={props.frame.x} y={scale()} />
      </Show>
      <Show when={props.lane.reference}>
        {(reference) => (
          <>
            <path d={`M${LEFT} ${scale()(reference().value)}H${props.frame.right}`} class="isotherm" />
            <LevelWords
              text={reference().text}
              y={scale()(reference().value)}
              frame={props.frame}
              top={props.top}
            />
          </>
        )}
      </Show>
    </g>
  );
}

export function TimePlot(props: TimePlotProps): JSX.Element {
  const width = (): number => props.width ?? 900;
  const height = (): number => props.height ?? 470;
  const frame = createMemo((): PlotFrame => {
    const { axis } = props;
    const isNarrow = width() < NARROW;
    const right = width() - (isNarrow ? NARROW_RIGHT : RIGHT);
    const x = (seconds: number): number => tenth(LEFT + axis.share(seconds) * (right - LEFT));
    return { axis, left: LEFT, right, isNarrow, x };
  });
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
      minutes: plainNumber(props.axis.endS / 60),
      count: plainNumber(props.pins.length),
    });
  /** Those that stand clear of the one before. */
  const shownMarks = (): number[] => {
    let lastX = Number.NEGATIVE_INFINITY;
    return frame().axis.marks.filter((seconds) => {
      const x = frame().x(seconds);
      if (x - lastX < MARK_ROOM) return false;
      lastX = x;
      return true;
    });
  };
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
      <Show when={props.apartS ?? null}>
        {(apartS) => <path class="apart-line" d={`M${frame().x(apartS())} ${TOP - 20}V${bottom()}`} />}
      </Show>
      <Show when={props.cursorS !== null}>
        <path class="cursor-line" d={`M${frame().x(props.cursorS ?? 0)} ${TOP - 8}V${bottom()}`} />
      </Show>
      <For each={shownMarks()}>
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
