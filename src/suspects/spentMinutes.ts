/**
 * What a session spent on finding the cause, up to it being named, by the same prices as the cheapest way: every reading
 * and look, each set-up once, each sample, each undone joint, each part that did not need changing.
 */
import type { SessionRecord } from '../session/record/record';
import { observationsOf } from './observation';
import { readingMinutes, SET_UP_MINUTES } from './testCosts';

const SEARCHES: ReadonlySet<string> = new Set(['sniff-begun', 'soap-put-on', 'lamp-shone']);

/** Of actions numbered below `beforeAction`, which stand in rows before `beforeRow`. */
export function spentMinutes(
  record: SessionRecord,
  beforeAction: number,
  beforeRow: number,
  usefulParts: readonly string[],
): number {
  const readings = observationsOf(record)
    .filter(({ action }) => action < beforeAction)
    .reduce((sum, { channel }) => sum + readingMinutes(channel), 0);
  const events = record.events.filter(({ row }) => row < beforeRow);
  const count = (test: (event: (typeof events)[number]) => boolean): number => events.filter(test).length;
  const once = (test: (event: (typeof events)[number]) => boolean): number => Math.min(1, count(test));
  return (
    readings +
    SET_UP_MINUTES.gauges * once(({ id }) => id === 'coupled') +
    SET_UP_MINUTES.running * once(({ id }) => id === 'engine-started') +
    SET_UP_MINUTES.sample * count(({ id }) => id === 'sample-started') +
    SET_UP_MINUTES.search * once(({ id }) => SEARCHES.has(id)) +
    SET_UP_MINUTES.recovery *
      once(({ id, subject }) => id === 'device-started' && subject === 'recovery-machine') +
    SET_UP_MINUTES.opened * count(({ id }) => id === 'loop-opened') +
    SET_UP_MINUTES.part * count(({ id, subject = '' }) => id === 'replaced' && !usefulParts.includes(subject))
  );
}
