/** Looking, reading, following a line: nothing in the car changes, but it is evidence. */
import type { Command } from '../commandSpecs';
import { done, type Rig } from '../rig';

export const look = {
  'read-sheet'(rig: Rig, command: Command) {
    const sheet = String(command.sheet);
    if (!rig.desk.sheetsRead.includes(sheet)) rig.desk.sheetsRead.push(sheet);
    return done({ id: 'read', subject: sheet });
  },

  look(_rig: Rig, command: Command) {
    return done({ id: 'looked', subject: String(command.at) });
  },

  trace(rig: Rig, command: Command) {
    const port = String(command.port);
    if (!rig.desk.traced.includes(port)) rig.desk.traced.push(port);
    return done({ id: 'traced', subject: port });
  },

  'judge-port'(rig: Rig, command: Command) {
    const port = String(command.port);
    const side = command.side === 'low' ? 'low' : 'high';
    rig.desk.judged[port] = side;
    const right = rig.ports.get(port)?.side === side;
    return done({ id: 'judged', subject: port, quantity: right ? 1 : 0, unit: 'bool' });
  },
};
