/**
 * The sentence of a finding: what was done, at which time and step, with readings and units of this record. Numbers are
 * written by `write`, so that a screen can use the reader's own units; the default is kPa, °C and g.
 */
import { STEPS_PER_SECOND } from '../session/clock';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { formatNumber } from '../units/format';
import { isWordId, type Message, say } from '../words/words';
import type { Finding } from './score';

/** What a sentence is made of. */
export type Telling = Pick<Finding, 'rule' | 'status' | 'step' | 'evidence'>;

export function sayFinding(finding: Telling, write: WriteQuantity = writeMetric): string {
  return say(messageOf(finding, write));
}

/** The same as an id and its parameters. Throws `RangeError` where the rule has no sentence for how it went. */
export function messageOf(finding: Telling, write: WriteQuantity = writeMetric): Message {
  const id = [finding.status, 'told', 'idle'].map((key) => `rules.${finding.rule}.${key}`).find(isWordId);
  if (id === undefined || !isWordId(id))
    throw new RangeError(`rule "${finding.rule}" has no sentence "${finding.status}"`);
  const values: Record<string, string> = {
    time: clockTime(finding.step),
    step: formatNumber(finding.step, 1),
  };
  for (const evidence of finding.evidence) values[evidence.name] = write(evidence);
  return { id, values };
}

/** Minutes and seconds of the job clock: "04:06". */
export function clockTime(step: number): string {
  const seconds = Math.floor(step / STEPS_PER_SECOND);
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${two(Math.floor(seconds / 60))}:${two(seconds % 60)}`;
}
