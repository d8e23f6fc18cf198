/** A strip of the last minutes of one reading, with what happened marked over it: each kind has a shape of its own. */
import { createMemo, For, type JSX } from 'solid-js';
import { plainNumber, writeClock } from './displayUnits';
import {
  LANE_FRAME,
  LANE_HEIGHT,
  LANE_WIDTH,
  laneMinutes,
  lanePath,
  laneRange,
  laneX,
  laneY,
  minuteAnchor,
  type Span,
  spread,
} from './stripLane';

export type MarkKind = 'hose' | 'valve' | 'engine' | 'trip' | 'clutch';

export interface LaneMark {
  readonly second: number;
  readonly kind: MarkKind;
  /** As in the list under the strip; a click of the clutch has none. */
  readonly number: number | null;
}

export interface StripLaneProps {
  readonly label: string;
  readonly side: 'low' | 'high' | 'charging';
  /** Symbol of the unit: it stands between the least and the most. */
  readonly unit: string;
  readonly span: Span;
  readonly seconds: readonly number[];
  /** In the reader's unit. */
  readonly values: readonly number[];
  readonly marks: readonly LaneMark[];
}

const MARK_APART = 25;

/** Centred on (0, 0), some 20 across. */
const SHAPE: Readonly<Record<Exclude<MarkKind, 'clutch'>, string>> = {
  hose: 'M-9 -7H9L0 9Z',
  valve: 'M0 -10L10 0L0 10L-10 0Z',
  engine: 'M-9 0A9 9 0 1 1 9 0A9 9 0 1 1 -9 0Z',
  trip: 'M-4 -9H4L9 -4V4L4 9H-4L-9 4V-4Z',
};

export function MarkShape(props: { readonly kind: MarkKind; readonly number: number | null }): JSX.Element {
  return props.kind === 'clutch' ? (
    <path d="M0 -6V6" class="lane-click" />
  ) : (
    <>
      <path d={SHAPE[props.kind]} class={`lane-mark ${props.kind}`} />
      <text y="4" class="lane-no">
        {props.number}
      </text>
    </>
  );
}

export function StripLane(props: StripLaneProps): JSX.Element {
  const range = createMemo(() => laneRange(props.values));
  const numbered = createMemo(() => props.marks.filter(({ number }) => number !== null));
  const places = createMemo(() =>
    spread(
      numbered().map(({ second }) => laneX(second, props.span)),
      MARK_APART,
    ),
  );
  const foot = LANE_HEIGHT - LANE_FRAME.bottom;
  const rows = (): { readonly value: number; readonly said: string }[] => {
    const { from, to } = range();
    const end = (value: number) => ({ value, said: plainNumber(value) });
    return [end(from), { value: (from + to) / 2, said: props.unit }, end(to)];
  };
  return (
    <svg viewBox={`0 0 ${LANE_WIDTH} ${LANE_HEIGHT}`} class="lane" role="img" aria-label={props.label}>
      <For each={rows()}>
        {({ value, said }) => (
          <>
            <path
              d={`M${LANE_FRAME.left} ${laneY(value, range())}H${LANE_WIDTH - LANE_FRAME.right}`}
              class="c-gr"
            />
            <text x={LANE_FRAME.left - 6} y={laneY(value, range()) + 4} text-anchor="end" class="c-ax">
              {said}
            </text>
          </>
        )}
      </For>
      <For each={laneMinutes(props.span)}>
        {(second) => (
          <text
            x={laneX(second, props.span)}
            y={LANE_HEIGHT - 5}
            text-anchor={minuteAnchor(second, props.span)}
            class="c-ax"
          >
            {writeClock(second)}
          </text>
        )}
      </For>
      <For each={props.marks.filter(({ number }) => number === null)}>
        {(mark) => (
          <g transform={`translate(${laneX(mark.second, props.span)} ${foot})`}>
            <MarkShape kind={mark.kind} number={null} />
          </g>
        )}
      </For>
      <For each={numbered()}>
        {(mark, i) => (
          <>
            <path
              d={`M${places()[i()]} 20L${laneX(mark.second, props.span)} ${LANE_FRAME.top}V${foot}`}
              class="lane-line"
            />
            <g transform={`translate(${places()[i()]} 12)`}>
              <MarkShape kind={mark.kind} number={mark.number} />
            </g>
          </>
        )}
      </For>
      <path
        d={lanePath(props.seconds, props.values, props.span, range())}
        class={`lane-curve ${props.side}`}
      />
    </svg>
  );
}
