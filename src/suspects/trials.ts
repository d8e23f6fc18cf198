/**
 * Trials: what was read and looked at together, up to the cause being named. Two gauges read one after the other, with
 * nothing changed between and within a minute, are one trial: nobody is to be blamed for writing down both. What was read
 * again with nothing changed is none, and counted.
 */
import { STEPS_PER_MINUTE } from '../session/clock';
import type { SessionRecord } from '../session/record/record';
import { isChanging, type Observation, observationsOf } from './observation';

export interface Trials {
  readonly trials: readonly (readonly Observation[])[];
  readonly repeats: number;
}

/** Of actions numbered below `beforeAction`. */
export function trialsOf(record: SessionRecord, beforeAction: number): Trials {
  const observations = observationsOf(record).filter(({ action }) => action < beforeAction);
  const trials: Observation[][] = [];
  let repeats = 0;
  for (const seen of observations) {
    if (!seen.counts) {
      repeats++;
      continue;
    }
    const open = trials.at(-1);
    const first = open?.[0];
    if (open && first && isOneMoment(record, first, seen)) open.push(seen);
    else trials.push([seen]);
  }
  return { trials, repeats };
}

function isOneMoment({ actions }: SessionRecord, first: Observation, later: Observation): boolean {
  if (later.step - first.step > STEPS_PER_MINUTE) return false;
  return !actions.some(
    ({ number, command }) => number > first.action && number < later.action && isChanging(command.do),
  );
}
