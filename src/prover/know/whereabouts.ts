/** How far a car has been put through its stages, and what a test costs from there. */
import { SET_UP_MINUTES } from '../../suspects/testCosts';
import type { Stage } from '../forecast/stages';
import type { Test } from './testsOf';

export interface Whereabouts {
  readonly stages: readonly Stage[];
  /** Place of the stage it is in. */
  readonly at: number;
  readonly hasGauges: boolean;
}

/** Of these it does not matter what a car was put through: dirt, and what is taken of a car that is switched off. */
const AT_ANY_TIME: ReadonlySet<string> = new Set(['eyes', 'recovery-machine']);

export function stageOf({ probes: [{ stage, tool }] }: Test, { stages, at }: Whereabouts): number {
  return stage === 'rest' && AT_ANY_TIME.has(tool) ? at : stages.findIndex(({ id }) => id === stage);
}

export function costOf(test: Test, here: Whereabouts): number {
  const gauges = test.needsGauges && !here.hasGauges ? SET_UP_MINUTES.gauges : 0;
  const stage = stageOf(test, here);
  return test.minutes + gauges + (stage === here.at ? 0 : here.stages[stage].minutes);
}
