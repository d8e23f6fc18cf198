/** What a job needs only later, in the order in which it is likely to be wanted; itself one of what comes later. */

import { formsAhead } from '../panels/FormHere';
import { fetchedWhenIdle } from '../panels/fetchedWhenIdle';
import type { RunningSession } from './session';
import { DebriefPage, InsidePage, WordsPage } from './sessionParts';
import { toldAfter } from './told';

export const fetchRest = (session: RunningSession) =>
  fetchedWhenIdle([
    formsAhead,
    DebriefPage.ahead,
    session.fetchEnd,
    () => toldAfter(session.model.facts.id),
    WordsPage.ahead,
    InsidePage.ahead,
    () => import('../panels/sound/followSound'),
  ]);
