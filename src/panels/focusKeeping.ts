/**
 * Focus inside a box: Tab goes round in it, and where the focused thing vanishes focus goes to what has come in its stead
 * and is marked `data-next`, else to its nearest neighbour, so that no key is lost to the page.
 */
const FOCUSABLE = [
  'button:not([tabindex="-1"]):not([disabled])',
  '[href]',
  'input',
  'select',
  'summary',
  '[tabindex="0"]',
].join(',');

export const focusablesOf = (box: HTMLElement): HTMLElement[] =>
  [...box.querySelectorAll<HTMLElement>(FOCUSABLE)].filter((element) => element.offsetParent !== null);

/** Tab from the last goes to the first, and back. */
export function keepTabInside(event: KeyboardEvent, box: HTMLElement): void {
  if (event.key !== 'Tab') return;
  const all = focusablesOf(box);
  const [first, last] = [all[0], all[all.length - 1]];
  if (!first || !last) return;
  const from = event.shiftKey ? first : last;
  const outside = !box.contains(document.activeElement);
  if (document.activeElement !== from && !outside) return;
  event.preventDefault();
  (event.shiftKey ? last : first).focus();
}

/** What the new things of the box name as the next step. */
function nextAmong(changes: readonly MutationRecord[]): HTMLElement | null {
  for (const node of changes.flatMap(({ addedNodes }) => [...addedNodes])) {
    if (!(node instanceof HTMLElement) || !node.isConnected) continue;
    const next = node.matches('[data-next]') ? node : node.querySelector<HTMLElement>('[data-next]');
    if (next) return next;
  }
  return null;
}

/** Watches the box until the returned function is called. */
export function keepFocusWithin(box: HTMLElement): () => void {
  let held: HTMLElement | null = null;
  let place = 0;
  const remember = (event: FocusEvent): void => {
    held = event.target instanceof HTMLElement ? event.target : null;
    place = held ? Math.max(0, focusablesOf(box).indexOf(held)) : 0;
  };
  const watcher = new MutationObserver((changes) => {
    const lost = document.activeElement === null || document.activeElement === document.body;
    if (!held || held.isConnected || !lost) return;
    const all = focusablesOf(box);
    (nextAmong(changes) ?? all[Math.min(place, all.length - 1)] ?? box).focus();
  });
  box.addEventListener('focusin', remember);
  watcher.observe(box, { childList: true, subtree: true });
  return () => {
    watcher.disconnect();
    box.removeEventListener('focusin', remember);
  };
}

/** Gives focus back once what took it is gone from the page. */
export function giveFocusBack(before: Element | null): void {
  queueMicrotask(() => {
    const free = document.activeElement === null || document.activeElement === document.body;
    if (free && before instanceof HTMLElement && before.isConnected) before.focus();
  });
}
