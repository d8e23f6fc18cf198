/** A state point: round on the low side, square on the high side, with its number; a ring round the chosen one. */
import { type JSX, Show } from 'solid-js';
import { Spot, type SpotChoice } from './Spot';
import type { SpotId } from './spots';

export function NumberedPoint(props: {
  readonly x: number;
  readonly y: number;
  readonly number: 1 | 2 | 3 | 4;
  readonly choice: SpotChoice | undefined;
}): JSX.Element {
  const isLow = (): boolean => props.number === 1 || props.number === 4;
  return (
    <Spot
      id={`p${props.number}` as SpotId}
      choice={props.choice}
      transform={`translate(${props.x} ${props.y})`}
    >
      <circle r="24" class="spot-hit" />
      <Show
        when={isLow()}
        fallback={
          <>
            <rect x="-19" y="-19" width="38" height="38" rx="6" class="spot-ring" />
            <rect x="-12.5" y="-12.5" width="25" height="25" rx="3" class="pt-high" />
          </>
        }
      >
        <circle r="20" class="spot-ring" />
        <circle r="13" class="pt-low" />
      </Show>
      <text y="5" class="c-pt">
        {props.number}
      </text>
    </Spot>
  );
}
