/** The drawn thing brought near, beside what is said of it. A picture only: everything it shows is in the words too. */
import { createEffect, type JSX, onCleanup, Show } from 'solid-js';
import type { SessionModel } from './sessionModel';

/** Draws a thing of the bay into a canvas of that many CSS pixels; null for what cannot be drawn. */
export type Picture = (id: string, width: number, height: number) => HTMLCanvasElement | null;

const WIDTH_PX = 280;
const HEIGHT_PX = 150;

export function CloseUp(props: {
  readonly session: SessionModel;
  readonly id: string;
  readonly picture: Picture | null;
}): JSX.Element {
  let place: HTMLDivElement | undefined;
  let asked = 0;
  const draw = (): void => {
    const canvas = props.picture?.(props.id, WIDTH_PX, HEIGHT_PX);
    if (!canvas || !place) return;
    canvas.style.width = `${WIDTH_PX}px`;
    canvas.style.maxWidth = '100%';
    place.replaceChildren(canvas);
  };
  // The bay is told of a change in the same turn; the picture is made of what it then knows.
  createEffect(() => {
    props.session.view();
    cancelAnimationFrame(asked);
    if (props.picture !== null) asked = requestAnimationFrame(draw);
  });
  onCleanup(() => cancelAnimationFrame(asked));
  return (
    <Show when={props.picture}>
      <div class="close-up" aria-hidden="true" ref={place} />
    </Show>
  );
}
