/** From a can put on to the last dose: feeding and settling take turns. */
import { sessionSetup } from '../sessionSetup';

export const charging = sessionSetup.createStateConfig({
  initial: 'noCan',
  states: {
    noCan: { on: { 'rise.canTapped': 'canOn' } },
    canOn: { on: { 'rise.canFeeding': 'feeding', 'fall.canTapped': 'noCan' } },
    feeding: { on: { 'fall.canFeeding': 'settling' } },
    settling: { on: { 'rise.canFeeding': 'feeding', 'fall.canTapped': 'noCan' } },
  },
});
