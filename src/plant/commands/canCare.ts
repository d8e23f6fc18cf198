/** A part-used can: what is left in it written on it, and put away with its valve shut. */
import type { Command } from '../commandSpecs';
import { done, type Rig, refuse } from '../rig';

export const canCare = {
  'mark-can'(rig: Rig, command: Command) {
    const can = String(command.can);
    const kg = Number(command.grams) / 1000;
    if (rig.desk.tasks.canMarksKg[can] === kg) return refuse('already');
    rig.desk.tasks.canMarksKg[can] = kg;
    return done({ id: 'can-marked', subject: can, quantity: kg, unit: 'kg' });
  },

  'store-can'(rig: Rig, command: Command) {
    const can = String(command.can);
    const { tasks, cans } = rig.desk;
    if (cans[can].onto !== null) return refuse('canOnHose');
    if (tasks.stored.includes(can)) return refuse('already');
    if (cans[can].place !== 'mat') return refuse('canInUse');
    tasks.stored.push(can);
    return done({ id: 'can-stored', subject: can });
  },
};
