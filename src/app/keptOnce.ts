/** Keeps what a screen makes first for the screens after it: it ends with the owner standing here, not with the screen. */
import { getOwner, runWithOwner } from 'solid-js';

export function keptOnce<Made>(): (make: () => Made) => Made {
  const owner = getOwner();
  let kept: { readonly made: Made } | null = null;
  return (make) => {
    kept ??= { made: runWithOwner(owner, make) as Made };
    return kept.made;
  };
}
