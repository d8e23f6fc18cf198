/** Escape leaves the page over another: the menu, help. */
import { onCleanup, onMount } from 'solid-js';

export function onEscape(leave: () => void): void {
  const heed = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && !event.defaultPrevented) leave();
  };
  onMount(() => document.addEventListener('keydown', heed));
  onCleanup(() => document.removeEventListener('keydown', heed));
}
