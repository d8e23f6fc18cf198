/**
 * A watch is a plain predicate looked at after every step and every command. The controller hears of its rising and
 * falling edges only; an edge marked notable ends a run "until something happens".
 *
 * `heldS`: the condition counts once it has held that long without a break. `rest`: the value of a signal has stayed
 * within `within` of where it was for `heldS`, and `during` held all that time.
 */
import type { Condition } from '../../../shared/schema/condition';

interface WatchBase {
  readonly id: string;
  readonly notable?: 'rise' | 'fall' | 'both';
  readonly heldS?: number;
}
export interface ConditionWatch extends WatchBase {
  readonly when: Condition;
}
export interface RestWatch extends WatchBase {
  readonly rest: string;
  /** In the signal's SI unit. */
  readonly within: number;
  readonly during?: Condition;
}
export type WatchSpec = ConditionWatch | RestWatch;

export interface Edge {
  readonly id: string;
  readonly to: 'rise' | 'fall';
  readonly notable: boolean;
}
