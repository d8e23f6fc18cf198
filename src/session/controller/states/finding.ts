/** What kind of loop is it, and which port is which: from papers, by following pipes. */
import { sessionSetup } from '../sessionSetup';

export const finding = sessionSetup.createStateConfig({
  initial: 'unread',
  states: {
    unread: { on: { 'do.read-sheet': 'read', 'do.trace': 'traced', 'do.judge-port': 'judged' } },
    read: { on: { 'do.trace': 'traced', 'do.judge-port': 'judged' } },
    traced: { on: { 'do.judge-port': 'judged' } },
    judged: { on: { 'do.trace': 'traced' } },
  },
});
