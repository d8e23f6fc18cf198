/** The scenario controller: order of the parts of a session. What each state means stands in its own file. */
import { sessionSetup } from './sessionSetup';
import { briefing } from './states/briefing';
import { debrief } from './states/debrief';
import { scoring } from './states/scoring';
import { settingUp } from './states/settingUp';
import { work } from './states/work';
import { wrapUp } from './states/wrapUp';

export const sessionMachine = sessionSetup.createMachine({
  id: 'session',
  context: ({ input }) => ({ mode: input.mode }),
  initial: 'settingUp',
  states: { settingUp, briefing, work, wrapUp, scoring, debrief },
});
