/** Flow in the pipes as arrows that move while the clock runs; they stand still on hold and where less motion is wanted. */
import { createEffect, For, type JSX, onCleanup, Show } from 'solid-js';
import { arrowsAlong, type Stand, speedPxPerS, strokesOf } from './flowArrows';

export interface FlowWay {
  readonly way: readonly (readonly [x: number, y: number])[];
  readonly flowKgPerS: number;
}

const EVERY_MS = 33;
const STROKES: readonly string[] = [
  '',
  'M-4-7L5 0L-4 7z',
  'M-9-7L0 0L-9 7zM0-7L9 0L0 7z',
  'M-13-7L-4 0L-13 7zM-4-7L5 0L-4 7zM5-7L14 0L5 7z',
];

const place = ({ x, y, turnDeg }: Stand): string =>
  `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turnDeg.toFixed(0)})`;

const wantsStillness = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

function Arrows(props: { readonly flow: FlowWay; readonly isRunning: boolean }): JSX.Element {
  const arrows: SVGPathElement[] = [];
  const strokes = (): number => strokesOf(props.flow.flowKgPerS);
  let movedPx = 0;
  const move = (): void =>
    arrowsAlong(props.flow.way, movedPx).forEach((stand, i) => {
      arrows[i]?.setAttribute('transform', place(stand));
    });
  createEffect(() => {
    if (!props.isRunning || strokes() === 0 || wantsStillness()) return;
    let frame = 0;
    let last = performance.now();
    const tick = (now: number): void => {
      frame = requestAnimationFrame(tick);
      if (now - last < EVERY_MS) return;
      movedPx += (speedPxPerS(props.flow.flowKgPerS) * (now - last)) / 1000;
      last = now;
      move();
    };
    frame = requestAnimationFrame(tick);
    onCleanup(() => cancelAnimationFrame(frame));
  });
  return (
    <Show when={strokes() > 0}>
      <For each={arrowsAlong(props.flow.way, 0)}>
        {(stand, i) => (
          <path
            ref={(element) => {
              arrows[i()] = element;
            }}
            d={STROKES[strokes()]}
            transform={place(stand)}
            class="flow-arrow"
          />
        )}
      </For>
    </Show>
  );
}

export function Flow(props: { readonly ways: readonly FlowWay[]; readonly isRunning: boolean }): JSX.Element {
  return (
    <g class="flow">
      <For each={props.ways.map((_, i) => i)}>
        {(i) => <Arrows flow={props.ways[i]} isRunning={props.isRunning} />}
      </For>
    </g>
  );
}
