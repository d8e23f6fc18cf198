/** A pipe cut open: its wall tinted by how warm it is, its phase as a texture. */
import type { JSX } from 'solid-js';
import type { Cell } from './loopState';
import { phaseOf, TEXTURE } from './phases';

/** Upper ends of the steps in which a wall is tinted, K: freezing, cool, mild, warm; what is over is hot. */
const STEPS_K = [273.15, 288.15, 308.15, 333.15];

/** 0 freezing to 4 hot. */
export const warmthOf = (temperatureK: number): number => {
  const step = STEPS_K.findIndex((end) => temperatureK < end);
  return step < 0 ? STEPS_K.length : step;
};

export function Pipe(props: {
  readonly d: string;
  readonly width: number;
  readonly cell: Cell;
}): JSX.Element {
  return (
    <>
      <path
        d={props.d}
        class={`pipe wall w${warmthOf(props.cell.temperatureK)}`}
        stroke-width={props.width + 6}
      />
      <path
        d={props.d}
        class="pipe"
        stroke={`url(#${TEXTURE[phaseOf(props.cell.liquidRatio)]})`}
        stroke-width={props.width}
      />
    </>
  );
}
