/** What is decided and what is named; a part may be replaced at any time, rightly or not. */
import { sessionSetup } from '../sessionSetup';

export const diagnosis = sessionSetup.createStateConfig({
  initial: 'open',
  states: {
    open: { on: { 'do.decide': 'decided', 'do.diagnose': 'named', 'do.replace': 'repaired' } },
    decided: { on: { 'do.diagnose': 'named', 'do.replace': 'repaired' } },
    named: { on: { 'do.replace': 'repaired' } },
    repaired: { on: { 'do.diagnose': 'named' } },
  },
});
