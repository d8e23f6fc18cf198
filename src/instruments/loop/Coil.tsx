/**
 * A coil cut open: two cells a pass, each pass with its liquid lying in it. A dashed mark stands where a healthy car's
 * coil would be dry, or full.
 */
import { For, type JSX, Show } from 'solid-js';
import type { Cell } from './loopState';
import { warmthOf } from './Pipe';
import { levelsAlong, phaseOf } from './phases';

export interface CoilProps {
  readonly x: number;
  /** y of the first pass in flow order, and the step to the next. */
  readonly y: number;
  readonly step: number;
  readonly width: number;
  readonly height: number;
  readonly cells: readonly Cell[];
  /** At which end the first pass begins. */
  readonly begins: 'left' | 'right';
  /** Which cell a healthy coil is dry or full from; null where that is not told. */
  readonly healthyFrom: number | null;
}

const CELLS_A_PASS = 2;

/** Passes run to and fro. */
const runsRight = ({ begins }: CoilProps, pass: number): boolean => (pass % 2 === 1) === (begins === 'right');

function PassBar(props: { readonly coil: CoilProps; readonly pass: number }): JSX.Element {
  const y = (): number => props.coil.y + props.pass * props.coil.step;
  const cells = (): readonly Cell[] =>
    props.coil.cells.slice(CELLS_A_PASS * props.pass, CELLS_A_PASS * (props.pass + 1));
  const isFull = (): boolean => cells().every(({ liquidRatio }) => phaseOf(liquidRatio) === 'liquid');
  const surface = (): string => {
    const { x, width, height, cells: all } = props.coil;
    const levels = levelsAlong(all.map(({ liquidRatio }) => liquidRatio));
    const own = [0, 1, 2].map((i) => levels[CELLS_A_PASS * props.pass + i]);
    const [left, middle, right] = runsRight(props.coil, props.pass) ? own : own.reverse();
    const at = (level: number): number => Math.round((y() + height - 1 - (height - 3) * level) * 10) / 10;
    const foot = y() + height - 1;
    return `M${x + 5} ${foot}V${at(left)}L${x + width / 2} ${at(middle)}L${x + width - 5} ${at(right)}V${foot}Z`;
  };
  const bar = (fill: string): JSX.Element => (
    <rect
      x={props.coil.x}
      y={y()}
      width={props.coil.width}
      height={props.coil.height}
      rx={props.coil.height / 2}
      fill={fill}
    />
  );
  return (
    <g>
      <Show when={isFull()} fallback={bar('url(#t-vap)')}>
        {bar('url(#t-liq)')}
      </Show>
      <Show when={!isFull() && cells().some(({ liquidRatio }) => phaseOf(liquidRatio) !== 'vapour')}>
        <path d={surface()} fill="url(#t-liq)" class="level" />
      </Show>
      <rect
        x={props.coil.x}
        y={y()}
        width={props.coil.width}
        height={props.coil.height}
        rx={props.coil.height / 2}
        class={`wall w${warmthOf(cells()[0]?.temperatureK ?? 0)}`}
        stroke-width="2.800"
      />
    </g>
  );
}

/** A dashed mark above the pass where a healthy coil changes. */
function HealthyMark(props: { readonly coil: CoilProps; readonly cell: number }): JSX.Element {
  const pass = (): number => Math.floor(props.cell / CELLS_A_PASS);
  const x = (): number => {
    const along = (props.cell % CELLS_A_PASS) / CELLS_A_PASS;
    const share = runsRight(props.coil, pass()) ? along : 1 - along;
    return props.coil.x + share * props.coil.width;
  };
  const y = (): number => props.coil.y + pass() * props.coil.step;
  return <path d={`M${x()} ${y() - 5}V${y() + props.coil.height + 5}`} class="healthy-mark" />;
}

export function Coil(props: CoilProps): JSX.Element {
  const passes = (): number[] =>
    Array.from({ length: Math.ceil(props.cells.length / CELLS_A_PASS) }, (_, i) => i);
  const turn = (i: number): string => {
    const atRight = runsRight(props, i);
    const x = atRight ? props.x + props.width - 4 : props.x + 4;
    const out = atRight ? 22 : -22;
    const half = props.step / 2;
    return `M${x} ${props.y + i * props.step + props.height / 2}q${out} 0 ${out} ${half}t${-out} ${half}`;
  };
  return (
    <g>
      <For each={passes().slice(1)}>{(i) => <path d={turn(i - 1)} class="wall" stroke-width="2.600" />}</For>
      <For each={passes()}>{(i) => <PassBar coil={props} pass={i} />}</For>
      <Show when={props.healthyFrom !== null}>
        <HealthyMark coil={props} cell={props.healthyFrom ?? 0} />
      </Show>
    </g>
  );
}
