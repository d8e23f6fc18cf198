/** The car is handed over: the log is closed. Exploring is not scored. */
import { sessionSetup } from '../sessionSetup';

export const wrapUp = sessionSetup.createStateConfig({
  always: [{ guard: 'isScored', target: 'scoring' }, { target: 'debrief' }],
});
