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
  return {
    over,
    lay(next: Over): void {
      shownHash = location.hash;
      if (!isEntry()) history.pushState(ENTRY, '');
      setOver(next);
    },
    takeAway(): void {
      setOver(null);
      if (isEntry()) history.back();
    },
    leaveFor(address: string): void {
      setOver(null);
      if (isEntry()) history.replaceState(null, '', address);
      else history.pushState(null, '', address);
    },
    /** After a step in the history that stayed at this address; a link within the page is such a step too. */
    follow(): void {
      const isWithin = location.hash !== shownHash;
      shownHash = location.hash;
      if (!isWithin) setOver(isEntry() ? (over() ?? 'menu') : null);
    },
    /** What lay over a page that was loaded anew is gone. */
    begin(): void {
      if (isEntry()) history.back();
    },
    /** After a step in the history to another address. */
    setAside(): void {
      setOver(null);
    },
  };
}
