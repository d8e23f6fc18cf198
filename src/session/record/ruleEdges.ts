/**
 * Conditions of rules that can come and go between two rows: looked at in each step, so that a row stands at each of
 * their edges. What hangs on an event or on a hand has its row anyway, and while nothing happens only those are looked at
 * that what people have set leaves open.
 */
import type { Condition } from '../../../shared/schema/condition';
import type { Rule } from '../../../shared/schema/rubric';
import { awake } from '../conditions/awake';
import { changesByItself } from '../conditions/changesByItself';
import { ConditionError, compileCondition } from '../conditions/compileCondition';
import type { Moment, Predicate, SignalTable } from '../conditions/moment';
import { type Settled, settled } from '../conditions/settled';

export interface RuleEdges {
  /**
   * True in a moment in which one of them became true or false. Has to be asked in every moment, in order. `quiet`: nothing
   * happened, now or in the moment before.
   */
  look(moment: Moment, quiet: boolean): boolean;
  /** Which of them held in the moment looked at last. */
  held(): readonly boolean[];
  /** As if the moment looked at last had been another. */
  hold(held: readonly boolean[]): void;
}

interface Watched {
  readonly holds: Predicate;
  readonly settled: Settled;
  was: boolean;
}

export function ruleEdges(rules: readonly Rule[], table: SignalTable): RuleEdges {
  const watched = rules.flatMap(conditionsOf).flatMap((condition) => compiled(condition, table));
  const open = awake(watched, (one, moment) => one.settled(moment));
  return {
    look(moment, quiet) {
      let changed = false;
      for (const one of open.now(moment, quiet)) {
        const now = one.holds(moment);
        if (now !== one.was) changed = true;
        one.was = now;
      }
      open.looked(moment, quiet);
      return changed;
    },
    held: () => watched.map(({ was }) => was),
    hold(held) {
      open.forget();
      watched.forEach((one, at) => {
        one.was = held[at] ?? false;
      });
    },
  };
}

function conditionsOf(rule: Rule): Condition[] {
  const needs = [rule.needs, rule.asked].filter((condition) => condition !== undefined);
  if ('never' in rule) return [rule.never, ...needs];
  if ('done' in rule) return [rule.done, ...needs];
  if ('before' in rule) return [rule.before.first, rule.before.then, ...needs];
  if ('while' in rule) return [{ all: [rule.while.during, rule.while.condition] }, ...needs];
  return needs;
}

/** None for a condition that only moves where a row is written anyway, or that this car cannot answer. */
function compiled(condition: Condition, table: SignalTable): Watched[] {
  try {
    if (!changesByItself(condition, table)) return [];
    return [{ holds: compileCondition(condition, table), settled: settled(condition, table), was: false }];
  } catch (error) {
    if (error instanceof ConditionError) return [];
    throw error;
  }
}
