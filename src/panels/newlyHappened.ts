/** What has happened between two views of a session, the oldest first; nothing where the session went back. */
import type { Happening, SessionView } from '../session/corePort';

const isSame = (one: Happening, other: Happening): boolean =>
  one.step === other.step && one.id === other.id && one.subject === other.subject;

/** `happened` is latest first and keeps only so many. */
export function newlyHappened(before: SessionView, now: SessionView): Happening[] {
  if (now.step < before.step) return [];
  const newest = before.happened[0];
  const known = newest === undefined ? -1 : now.happened.findIndex((one) => isSame(one, newest));
  const fresh =
    known < 0 ? now.happened.filter(({ step }) => step >= before.step) : now.happened.slice(0, known);
  return [...fresh].reverse();
}
