/** What is spoken follows what is shown at most every two seconds, and then with the latest. */
import { createEffect, createSignal, onCleanup } from 'solid-js';

const SPOKEN_EVERY_MS = 2000;

export function calm(read: () => string): () => string {
  const [spoken, setSpoken] = createSignal(read());
  let last = 0;
  let timer = 0;
  createEffect(() => {
    const now = read();
    clearTimeout(timer);
    const wait = last + SPOKEN_EVERY_MS - Date.now();
    const tell = (): void => {
      last = Date.now();
      setSpoken(now);
    };
    if (wait <= 0) tell();
    else timer = window.setTimeout(tell, wait);
  });
  onCleanup(() => clearTimeout(timer));
  return spoken;
}
