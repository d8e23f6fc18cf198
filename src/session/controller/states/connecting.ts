/** A port from capped to open and back: cap off, snapped on, pin on the core. */
import { sessionSetup } from '../sessionSetup';

export const connecting = sessionSetup.createStateConfig({
  initial: 'capped',
  states: {
    capped: { on: { 'rise.portUncapped': 'uncapped' } },
    uncapped: { on: { 'fall.portUncapped': 'capped', 'rise.hoseCoupled': 'coupled' } },
    coupled: { on: { 'rise.couplerOpen': 'open', 'fall.hoseCoupled': 'uncapped' } },
    open: { on: { 'fall.couplerOpen': 'coupled' } },
  },
});
