/** Asking the owner, and writing down what kind of loop, refrigerant and clutch this is: right or wrong is evidence. */
import { clutchIs } from '../clutchIs';
import type { Command } from '../commandSpecs';
import { gasesThatFit } from '../gasInLoop';
import { done, type Rig, refuse } from '../rig';
import { sumTruth } from '../sumTruth';
import type { ClutchDoing, SumOf } from '../taskDesk';

const judged = (id: string, subject: string, right: boolean) =>
  done({ id, subject, quantity: right ? 1 : 0, unit: 'bool' });

export const findOut = {
  ask(_rig: Rig, command: Command) {
    return done({ id: 'asked', subject: String(command.about) });
  },

  'note-loop'(rig: Rig, command: Command) {
    const kind = String(command.kind);
    return judged('loop-noted', kind, rig.vehicle.metering.kind === kind);
  },

  'note-gas'(rig: Rig, command: Command) {
    const gas = String(command.gas);
    return judged('gas-noted', gas, gasesThatFit(rig).includes(gas));
  },

  'note-clutch'(rig: Rig, command: Command) {
    const doing = String(command.doing) as ClutchDoing;
    const right = clutchIs(rig, doing);
    return right === null ? refuse('noClutch') : judged('clutch-noted', doing, right);
  },

  sum(rig: Rig, command: Command) {
    const of = String(command.of) as SumOf;
    const truth = sumTruth(rig, of);
    if (truth === null) return refuse('nothingToSum');
    return judged('summed', of, Math.abs(Number(command.amount) - truth.amount) <= truth.tolerance);
  },
};
