/** Eyes at an open coupler, and the moment of a critical mistake. Practice stops there; going back undoes it. */
import { sessionSetup } from '../sessionSetup';

const critical = [{ guard: 'stopsAtCriticals', target: 'stopped' }, { target: 'breached' }] as const;

export const safety = sessionSetup.createStateConfig({
  initial: 'clear',
  states: {
    clear: { on: { 'rise.exposed': 'exposed', 'rise.critical': critical } },
    exposed: { on: { 'fall.exposed': 'clear', 'rise.critical': critical } },
    stopped: { on: { 'do.begin': 'breached' } },
    breached: {},
  },
});
