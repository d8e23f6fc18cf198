/** What a person wears. */
import type { Command } from '../commandSpecs';
import { done, type Rig, refuse } from '../rig';

type Item = 'goggles' | 'gloves' | 'overall';

export const gear = {
  wear(rig: Rig, command: Command) {
    const item = command.item as Item;
    if (rig.desk.worn[item]) return refuse('alreadyWorn');
    rig.desk.worn[item] = true;
    return done({ id: 'worn', subject: item });
  },

  'take-off'(rig: Rig, command: Command) {
    const item = command.item as Item;
    if (!rig.desk.worn[item]) return refuse('notWorn');
    rig.desk.worn[item] = false;
    return done({ id: 'removed', subject: item });
  },
};
