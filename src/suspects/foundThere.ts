/**
 * Whether a search has shown a leak where a claimed cause is: bubbles or a glow there, or ticks there that are no tick for
 * nothing, more than one at once or heard again on a second round. Of a part in its case: at the openings of the case.
 * Where nobody says which of several places is meant, any of them that the cause can be at will do.
 */
import { faultOf } from '../faults/registry';
import { CASE_OPENINGS } from '../plant/caseOpenings';
import type { SessionRecord } from '../session/record/record';
import type { Ghost } from './ghost';

const SEEN: ReadonlySet<string> = new Set(['bubbles-seen', 'glow-seen']);
/** Ticks, or rounds with a tick, from which on it is not for nothing. */
const SURE = 2;

/** `site`: where the fault is that is claimed, if it is there. Of what happened before `row`. */
export function isFoundThere(
  { events }: Pick<SessionRecord, 'events'>,
  row: number,
  { parts: { places } }: Pick<Ghost, 'parts'>,
  { cause, site }: { readonly cause: string; readonly site?: string | undefined },
): boolean {
  const canBe = faultOf(cause).canBeAt ?? (() => true);
  const there = places
    .filter((place) => (site === undefined ? canBe(place) : place.id === site))
    .flatMap(({ id, isHidden }) => (isHidden ? Object.keys(CASE_OPENINGS) : [id]));
  const found = events.filter((event) => event.row < row && there.includes(event.subject ?? ''));
  const ticked = found.filter(({ id }) => id === 'detector-ticked');
  return (
    found.some(({ id }) => SEEN.has(id)) ||
    ticked.some(({ subject, quantity = 0 }) => {
      const rounds = ticked.filter((other) => other.subject === subject).length;
      return quantity >= SURE || rounds >= SURE;
    })
  );
}
