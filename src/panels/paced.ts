/** What changes many times a second, followed seldom: `paced` says it at most so often, and in the end always the latest. */
import { createEffect, createSignal, onCleanup } from 'solid-js';

export function paced<T>(read: () => T, everyMs: number): () => T {
  const [told, setTold] = createSignal(read());
  let lastMs = 0;
  let timer = 0;
  createEffect(() => {
    const now = read();
    clearTimeout(timer);
    const tell = (): void => {
      lastMs = performance.now();
      setTold(() => now);
    };
    const wait = lastMs + everyMs - performance.now();
    if (wait <= 0) tell();
    else timer = window.setTimeout(tell, wait);
  });
  onCleanup(() => clearTimeout(timer));
  return told;
}
