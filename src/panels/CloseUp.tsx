/** The drawn thing brought near, beside what is said of it. A picture only: everything it shows is in the words too. */
import { createEffect, createMemo, type JSX, onCleanup, Show } from 'solid-js';
import { afterwards } from './afterwards';
import type { SessionModel } from './sessionModel';

/** Draws a thing of the bay into a canvas of that many CSS pixels; null for what cannot be drawn. */
export type Picture = (id: string, width: number, height: number) => HTMLCanvasElement | null;

const LEAST_WIDTH_PX = 240;
/** Beside a sentence (forms.css). */
const SMALL_WIDTH_PX = 176;
const HEIGHT_SHARE = 0.64;
/** Of the form's height, so that what can be done stays in sight. */
const MOST_OF_FORM = 0.44;

/** Cues that a picture may show, besides what the thing itself has. */
const SHOWN = [
  'clutch.turning',
  'sightGlass.bubblesRatio',
  'sightGlass.streaked',
  'soap.bubbles',
  'lamp.glow',
] as const;
const OF_THE_THING = ['frost', 'sweat', 'stain', 'dirt'] as const;

/** Changes when the picture does. */
function shownNow({ signal }: SessionModel, id: string): string {
  return [
    ...SHOWN.map(signal),
    ...OF_THE_THING.map((cue) => signal(`${cue}.${id}`)),
    signal(`can.${id}.frostLevelRatio`),
    signal(`can.${id}.chilled`),
  ].join();
}

export function CloseUp(props: {
  readonly session: SessionModel;
  readonly id: string;
  readonly picture: Picture | null;
  /** Beside a sentence, not over all that is said. */
  readonly small?: boolean;
}): JSX.Element {
  let place: HTMLDivElement | undefined;
  let asked = 0;
  const draw = (): void => {
    if (!place) return;
    const width = props.small ? SMALL_WIDTH_PX : Math.max(LEAST_WIDTH_PX, place.clientWidth);
    const room = (place.closest('.form')?.clientHeight ?? Number.POSITIVE_INFINITY) * MOST_OF_FORM;
    const canvas = props.picture?.(props.id, width, Math.min(width * HEIGHT_SHARE, room));
    place.replaceChildren(...(canvas ? [canvas] : []));
  };
  const shown = createMemo(() => shownNow(props.session, props.id));
  // The bay is told of a change with the next picture of the screen; this one is made of what it then knows.
  const known = afterwards(() => [props.session.view(), shown()]);
  createEffect(() => {
    known();
    cancelAnimationFrame(asked);
    if (props.picture !== null && props.id !== '') asked = requestAnimationFrame(draw);
  });
  onCleanup(() => cancelAnimationFrame(asked));
  return (
    <Show when={props.picture}>
      <div class="close-up" classList={{ small: props.small }} aria-hidden="true" ref={place} />
    </Show>
  );
}
