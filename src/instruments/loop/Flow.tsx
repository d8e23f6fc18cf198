/** Flow in the pipes as arrows that move while the clock runs; they stand still on hold and where less motion is wanted. */
import { createEffect, createMemo, For, Index, type JSX, onCleanup, Show } from 'solid-js';
import { arrowsAlong, type Stand, speedPxPerS, strokesOf } from './flowArrows';

export interface FlowWay {
  readonly way: readonly (readonly [x: number, y: number])[];
  readonly flowKgPerS: number;
}

/** They go some 20 px a second at most: a step of one is smooth. */
const EVERY_MS = 50;
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
  // a frame of the session changes the flow; only what these say anew begins anything anew
  const strokes = createMemo(() => strokesOf(props.flow.flowKgPerS));
  const way = createMemo(() => props.flow.way);
  const stands = createMemo(() => arrowsAlong(way(), 0));
  const isMoving = createMemo(() => props.isRunning && strokes() > 0);
  let movedPx = 0;
  const move = (): void =>
    arrowsAlong(way(), movedPx).forEach((stand, i) => {
      arrows[i]?.setAttribute('transform', place(stand));
    });
  createEffect(() => {
    if (!isMoving() || wantsStillness()) return;
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
      <For each={stands()}>
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
      <Index each={props.ways}>{(flow) => <Arrows flow={flow()} isRunning={props.isRunning} />}</Index>
    </g>
  );
}
