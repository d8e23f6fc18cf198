/**
 * The sentence of a finding: what was done, at which time, with readings and units of this record. Numbers are written by
 * `write`, so that a screen can use the reader's own units; the default is kPa, °C and g. Where no hose ever was on the car
 * nobody could read a pressure, and what a sentence has in brackets, a pressure beside the point, is left out.
 */
import { STEPS_PER_SECOND } from '../session/clock';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { isWordId, type Message, say } from '../words/words';
import type { Finding } from './score';

/** What a sentence is made of. */
export type Telling = Pick<Finding, 'rule' | 'status' | 'step' | 'evidence'>;

const ASIDE = /\[([^\]]*)\]/gu;

export function sayFinding(
  finding: Telling,
  write: WriteQuantity = writeMetric,
  couldReadPressures = true,
): string {
  return say(messageOf(finding, write)).replace(ASIDE, couldReadPressures ? '$1' : '');
}

/** The same as an id and its parameters. Throws `RangeError` where the rule has no sentence for how it went. */
function messageOf(finding: Telling, write: WriteQuantity): Message {
  const id = [finding.status, 'told', 'idle'].map((key) => `rules.${finding.rule}.${key}`).find(isWordId);
  if (id === undefined || !isWordId(id))
    throw new RangeError(`rule "${finding.rule}" has no sentence "${finding.status}"`);
  const values: Record<string, string> = { time: clockTime(finding.step) };
  for (const evidence of finding.evidence) values[evidence.name] = write(evidence);
  return { id, values };
}

/** Minutes and seconds of the job clock: "04:06". */
export function clockTime(step: number): string {
  const seconds = Math.floor(step / STEPS_PER_SECOND);
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${two(Math.floor(seconds / 60))}:${two(seconds % 60)}`;
}
