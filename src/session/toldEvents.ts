/**
 * What of an event reaches whoever plays. The record keeps events whole; on the way out the number goes, unless an
 * instrument showed it or the command itself said it: in an assessed session for every event not on the closed list, in
 * the other modes for a judged port, a finding or a sum, because right or wrong is told in the debrief. Which side a can is open to is
 * likewise the trainee's to find.
 */
import type { Outcome, PlantEvent } from '../plant/commandSpecs';
import type { Mode } from './corePort';

/** Their numbers come from an instrument or from the command. */
const SHOWN: ReadonlySet<string> = new Set([
  ...['noted', 'gauge-zeroed'],
  ...['engine-started', 'engine-speed', 'blower-set', 'can-opened', 'can-tilted', 'can-inverted', 'labelled'],
  ...['detector-ticked', 'bubbles-seen', 'glow-seen', 'dye-injected', 'oil-in-part'],
  ...['tank-opened', 'regulator-set', 'oil-injected'],
  ...[
    'seals-renewed',
    'can-marked',
    'oil-filled',
    'old-noted',
    'conversion-labelled',
    'recovery-arranged',
    'licensed-recovered',
  ],
]);
const NEVER_SHOWN: ReadonlySet<string> = new Set([
  ...['judged', 'loop-noted', 'gas-noted', 'clutch-noted', 'summed'],
]);
/** Their subject is what an assessed trainee has to find out. */
const SUBJECT_HIDDEN: ReadonlySet<string> = new Set([
  'can-open-to',
  'tank-open-to',
  'oil-injected',
  'tank-contaminated',
  'compressor-damaged',
  'decomposed',
  'gas-mixed',
]);

export function toldEvent<Told extends PlantEvent>(event: Told, mode: Mode): Told {
  const assessed = mode === 'assessed';
  const shows = assessed ? SHOWN.has(event.id) : !NEVER_SHOWN.has(event.id);
  if (shows) return event;
  const { quantity: _quantity, unit: _unit, subject, ...rest } = event;
  const named = subject === undefined || (assessed && SUBJECT_HIDDEN.has(event.id)) ? {} : { subject };
  return { ...rest, ...named } as Told;
}

export function toldOutcome(outcome: Outcome, mode: Mode): Outcome {
  if (!outcome.ok) return outcome;
  return { ok: true, events: outcome.events.map((event) => toldEvent(event, mode)) };
}
