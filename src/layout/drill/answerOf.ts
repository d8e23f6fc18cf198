/** The answer of a bay: a side, or the letter of a port. It follows from the trace alone, not from what was drawn first. */
import { tracePort } from '../trace';
import type { DrillBay } from './drill';

export interface DrillAnswer {
  /** 'low' or 'high' where a side was asked for, else the id of the low-side port. */
  readonly right: string;
  readonly choices: readonly string[];
  /** The port that the answer is about. */
  readonly port: string;
}

/** Throws `RangeError` where not exactly one port of those asked about is on the low side. */
export function answerOf(bay: DrillBay): DrillAnswer {
  const { question } = bay;
  if (question.kind === 'side') {
    const { side } = tracePort(bay.layout, question.port);
    return { right: side, choices: ['low', 'high'], port: question.port };
  }
  const low = question.ports.filter((id) => isOnLoop(bay, id) && tracePort(bay.layout, id).side === 'low');
  if (low.length !== 1) throw new RangeError(`drill ${bay.layout.id}: ${low.length} low-side ports`);
  return { right: low[0], choices: question.ports, port: low[0] };
}

export function isOnLoop({ layout }: DrillBay, portId: string): boolean {
  const on = layout.ports.find(({ id }) => id === portId)?.on;
  if (on === undefined) return false;
  return 'part' in on || layout.lines.some(({ id, from }) => id === on.line && from !== undefined);
}
