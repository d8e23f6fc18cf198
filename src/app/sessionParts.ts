/**
 * What a job needs only later: forms, see-inside, the bay in words, the debrief. It is fetched when it is wanted, and all of
 * it while nothing else is to do once work has begun, so that it is there when the network has gone.
 */
import { createEffect, createMemo, onCleanup } from 'solid-js';
import { comingLater, startLater } from '../panels/comingLater';
import type { RunningSession } from './session';
import { withWords } from './withWords';

/** Only who goes on needs it. */
export const ResumeCard = comingLater(() => import('../panels/ResumeCard'));
export const InsidePage = comingLater(() => withWords(['inside'], import('./InsidePage')));
export const WordsPage = comingLater(() => withWords(['written'], import('./WordsPage')));
export const DebriefPage = comingLater(() => withWords(['findings', 'inside'], import('./DebriefPage')));

/** After work has begun, so that what is needed to begin comes first. */
const LATER_MS = 4000;

export function fetchRestWhenIdle(session: RunningSession): void {
  const hasBegun = createMemo(() => session.model.view().phase === 'work');
  createEffect(() => {
    if (hasBegun())
      onCleanup(startLater(LATER_MS, async () => (await import('./fetchRest')).fetchRest(session)));
  });
}
