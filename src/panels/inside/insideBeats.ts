/**
 * When the parts of see-inside are drawn anew while the clock runs: the loop fifteen times a second, the diagram a picture
 * later with the same state, tables and sentences four times a second, as no one reads faster. A held clock leaves all three
 * at the same moment.
 */

import { afterwards } from '../afterwards';
import { paced } from '../paced';
import type { SessionModel } from '../sessionModel';

const DRAWN_MS = 60;
const TOLD_MS = 240;

export interface InsideBeats {
  /** Each is another value whenever its part is due. */
  readonly drawn: () => unknown;
  readonly plotted: () => unknown;
  readonly told: () => unknown;
}

export function insideBeats(session: SessionModel): InsideBeats {
  const drawn = paced(() => [session.pulse(), session.clock()], DRAWN_MS);
  const plotted = afterwards(drawn);
  return { drawn, plotted, told: afterwards(paced(plotted, TOLD_MS)) };
}
