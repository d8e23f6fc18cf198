/** The last state: everything that can be told is told. */
import { sessionSetup } from '../sessionSetup';

export const debrief = sessionSetup.createStateConfig({ type: 'final' });
