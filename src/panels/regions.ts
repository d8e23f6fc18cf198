/** F6 and Shift+F6 go from region to region: whatever is marked `data-region` and stands on the screen, in order. */
export function goToRegion(root: ParentNode, step: 1 | -1): void {
  const regions = [...root.querySelectorAll<HTMLElement>('[data-region]')].filter(
    (region) => region.offsetParent !== null,
  );
  if (regions.length === 0) return;
  const active = document.activeElement;
  const here = regions.findIndex((region) => region.contains(active));
  const next =
    here < 0 ? (step > 0 ? 0 : regions.length - 1) : (here + step + regions.length) % regions.length;
  const first = regions[next].querySelector<HTMLElement>(
    'button:not([tabindex="-1"]), [href], input, select, [tabindex="0"]',
  );
  (first ?? regions[next]).focus();
}

/** Hears F6 wherever focus is, also where it is nowhere. */
export function onRegionKey(event: KeyboardEvent): void {
  if (event.key !== 'F6') return;
  event.preventDefault();
  goToRegion(document, event.shiftKey ? -1 : 1);
}
