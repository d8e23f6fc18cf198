/** Why nothing goes onto a port now: put out of use for good, its cap is on, or a coupler sits there. */
import type { Outcome } from './commandSpecs';
import { hoseOn } from './hoseOn';
import { type Rig, refuse } from './rig';

export function notFree(rig: Rig, port: string): Outcome | null {
  if (rig.desk.tasks.conversion.disabled.includes(port)) return refuse('portDisabled');
  if (rig.desk.caps[port]) return refuse('capOn');
  return hoseOn(rig, port) ? refuse('portTaken') : null;
}
