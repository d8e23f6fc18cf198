/**
 * Follows with the next picture of the screen, so that what draws one thing and what draws another share no picture. What changes
 * in every picture would never be shown: it has to be paced before.
 */
import { createEffect, createSignal, on, onCleanup } from 'solid-js';

export function afterwards<T>(read: () => T): () => T {
  const [told, setTold] = createSignal(read());
  let request = 0;
  createEffect(
    on(
      read,
      (now) => {
        cancelAnimationFrame(request);
        request = requestAnimationFrame(() => setTold(() => now));
      },
      { defer: true },
    ),
  );
  onCleanup(() => cancelAnimationFrame(request));
  return told;
}
