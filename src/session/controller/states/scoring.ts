/** The record is made from the log and scored, outside the session. */
import { sessionSetup } from '../sessionSetup';

export const scoring = sessionSetup.createStateConfig({ on: { scored: 'debrief' } });
