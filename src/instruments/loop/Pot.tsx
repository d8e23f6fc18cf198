/** A vessel cut open, with its liquid in it and, dashed, how high a healthy car's would stand. */
import { type JSX, Show } from 'solid-js';
import type { Cell } from './loopState';
import { warmthOf } from './Pipe';
import { drawnLevel } from './phases';

export function Pot(props: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly round: number;
  readonly cell: Cell;
  /** Healthy share of liquid; NaN where that is not told. */
  readonly healthy: number;
}): JSX.Element {
  const inner = (): number => props.height - 6;
  const levelY = (ratio: number): number => props.y + props.height - 3 - inner() * drawnLevel(ratio);
  const clip = (): string => `pot-${props.x}`;
  return (
    <g>
      <clipPath id={clip()}>
        <rect x={props.x} y={props.y} width={props.width} height={props.height} rx={props.round} />
      </clipPath>
      <rect
        x={props.x}
        y={props.y}
        width={props.width}
        height={props.height}
        rx={props.round}
        fill="url(#t-vap)"
      />
      <g clip-path={`url(#${clip()})`}>
        <path
          d={`M${props.x - 2} ${levelY(props.cell.liquidRatio)}h${props.width + 4}V${props.y + props.height + 2}h${-props.width - 4}Z`}
          fill="url(#t-liq)"
          class="level"
        />
      </g>
      <rect
        x={props.x}
        y={props.y}
        width={props.width}
        height={props.height}
        rx={props.round}
        class={`wall w${warmthOf(props.cell.temperatureK)}`}
        stroke-width="2.800"
      />
      <Show when={Number.isFinite(props.healthy)}>
        <path d={`M${props.x - 4} ${levelY(props.healthy)}h${props.width + 8}`} class="healthy-mark" />
      </Show>
    </g>
  );
}
