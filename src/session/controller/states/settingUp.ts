/** The plant is being built: vehicle, hidden faults, errors of the instruments. */
import { sessionSetup } from '../sessionSetup';

export const settingUp = sessionSetup.createStateConfig({ on: { plantBuilt: 'briefing' } });
