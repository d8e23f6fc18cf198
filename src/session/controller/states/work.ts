/** The job itself: five matters that go on side by side. */
import { sessionSetup } from '../sessionSetup';
import { charging } from './charging';
import { connecting } from './connecting';
import { diagnosis } from './diagnosis';
import { finding } from './finding';
import { safety } from './safety';

export const work = sessionSetup.createStateConfig({
  type: 'parallel',
  states: { finding, connecting, charging, diagnosis, safety },
  on: { 'do.finish': 'wrapUp' },
});
