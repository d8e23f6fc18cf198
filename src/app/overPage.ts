/**
 * What lies over a page, menu or help. It has an entry of its own in the browser's history, so that going back takes it away
 * and not the page; who goes elsewhere from there leaves no such entry behind.
 */
import { createSignal } from 'solid-js';

type Over = 'menu' | 'help' | null;

const ENTRY = 'over';
const isEntry = (): boolean => history.state === ENTRY;

export function overPage() {
  const [over, setOver] = createSignal<Over>(null);
  let shownHash = location.hash;
  const takeAway = (): void => {
    setOver(null);
    if (isEntry()) history.back();
  };
  // what lay over a page that was loaded anew is gone
  takeAway();
  return {
    over,
    takeAway,
    lay(next: Over): void {
      shownHash = location.hash;
      if (!isEntry()) history.pushState(ENTRY, '');
      setOver(next);
    },
    leaveFor(address: string): void {
      setOver(null);
      history[isEntry() ? 'replaceState' : 'pushState'](null, '', address);
    },
    /** After a step in the history. A link within the page is such a step too and takes nothing away. */
    follow(): void {
      const isWithin = location.hash !== shownHash;
      shownHash = location.hash;
      if (!isWithin) setOver(isEntry() ? (over() ?? 'menu') : null);
    },
  };
}
