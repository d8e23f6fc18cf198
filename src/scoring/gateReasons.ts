/** Why gates stayed shut, each reason once: how that was answered which the job asks, from what the score knows. */
import type { Condition } from '../../shared/schema/condition';
import type { Rule } from '../../shared/schema/rubric';
import type { SessionRecord } from '../session/record/record';
import type { Score, ScoringRubric } from './score';

/**
 * `wrong` another answer than the right one; `missing` none; `unread` one before anything was read, `early` a deed before
 * what had to come first; `off` a charge too far off the label; `forbidden` a deed that the job must not see.
 */
export const GATE_REASONS = ['wrong', 'missing', 'unread', 'early', 'off', 'forbidden'] as const;
export type GateReason = (typeof GATE_REASONS)[number];

/** To stop is no answer to whether to charge. */
const ANSWERS: ReadonlySet<string> = new Set(['charge', 'do-not-charge', 'refer']);

export function gateReasons(
  { gates }: Pick<Score, 'gates'>,
  { events }: Pick<SessionRecord, 'events'>,
  { rules }: Pick<ScoringRubric, 'rules'>,
): GateReason[] {
  const isNamed = events.some(({ id }) => id === 'diagnosed');
  const isDecided = events.some(({ id, subject = '' }) => id === 'decided' && ANSWERS.has(subject));
  const reasonOf = (rule: Rule): GateReason => {
    if ('before' in rule) return rule.id === 'readFirst' ? 'unread' : 'early';
    if ('never' in rule) return isOfDecision(rule.never) ? 'wrong' : 'forbidden';
    if ('done' in rule) return isDecided && isOfDecision(rule.done) ? 'wrong' : 'missing';
    if ('while' in rule) return 'missing';
    if (rule.outcome.measure === 'charge.errorKg') return 'off';
    return rule.outcome.measure === 'diagnosis.right' && !isNamed ? 'missing' : 'wrong';
  };
  const found = rules.filter(({ id }) => gates.includes(id)).map(reasonOf);
  return GATE_REASONS.filter((reason) => found.includes(reason));
}

function isOfDecision(condition: Condition): boolean {
  if ('all' in condition) return condition.all.some(isOfDecision);
  if ('any' in condition) return condition.any.some(isOfDecision);
  if ('not' in condition) return isOfDecision(condition.not);
  return 'event' in condition ? condition.event === 'decided' : condition.signal.startsWith('decision.');
}
