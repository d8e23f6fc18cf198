/** What is decided, named, mended and written: the job card's lines are evidence, and a new part clears its fault. */
import type { Command } from '../commandSpecs';
import { done, type Rig, refuse } from '../rig';

export const card = {
  decide(_rig: Rig, command: Command) {
    return done({ id: 'decided', subject: String(command.answer) });
  },

  diagnose(_rig: Rig, command: Command) {
    return done({ id: 'diagnosed', subject: String(command.cause) });
  },

  replace(rig: Rig, command: Command) {
    const part = String(command.part);
    if (rig.desk.engineRpm > 0) return refuse('engineRuns');
    rig.desk.replaced.push(part);
    rig.repair(part);
    return done({ id: 'replaced', subject: part });
  },

  'write-label'(_rig: Rig, command: Command) {
    return done({ id: 'labelled', quantity: Number(command.grams) / 1000, unit: 'kg' });
  },
};
