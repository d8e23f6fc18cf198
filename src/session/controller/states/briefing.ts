/** The job card lies on the bench; nothing in the bay can be touched yet. */
import { sessionSetup } from '../sessionSetup';

export const briefing = sessionSetup.createStateConfig({ on: { 'do.begin': 'work' } });
