/**
 * Looks at all watches of a session and reports edges. Timers count steps, so only a step moves them; a command is looked
 * at between steps without. A watch whose signals this plant does not have is left out.
 *
 * State is three numbers a watch: level, steps held, reference value.
 */
import { STEPS_PER_SECOND } from '../clock';
import { awake } from '../conditions/awake';
import { ConditionError, compileCondition, matchingSignals } from '../conditions/compileCondition';
import type { Moment, SignalTable } from '../conditions/moment';
import { type Settled, settled } from '../conditions/settled';
import type { Edge, RestWatch, WatchSpec } from './watch';

const LEVEL = 0;
const HELD = 1;
const REFERENCE = 2;
const WIDTH = 3;

export interface WatchBank {
  /**
   * Edges of this moment, in registry order; mostly the same empty array. In a `quiet` step nothing happened, now or in
   * the moment before: watches that cannot change by themselves, or not before somebody does something, are passed over.
   */
  look(moment: Moment, isStep: boolean, quiet?: boolean): readonly Edge[];
  snapshot(): Float64Array;
  restore(state: Float64Array): void;
}

/** Does the watch hold now? `at` is where its state starts. */
type Look = (moment: Moment, state: Float64Array, at: number, isStep: boolean) => boolean;

export function watchBank(specs: readonly WatchSpec[], table: SignalTable): WatchBank {
  const known = specs.flatMap((spec) => {
    const look = lookOf(spec, table);
    return look === null ? [] : [{ spec, look, settled: settledOf(spec, table) }];
  });
  const open = awake(
    known.map((_, at) => at),
    (at, moment) => known[at].settled(moment),
  );
  const state = new Float64Array(WIDTH * known.length);
  const none: readonly Edge[] = [];
  return {
    look(moment, isStep, quiet = false) {
      let edges: Edge[] | null = null;
      for (const i of open.now(moment, quiet)) {
        const at = WIDTH * i;
        const level = known[i].look(moment, state, at, isStep) ? 1 : 0;
        if (level === state[at + LEVEL]) continue;
        state[at + LEVEL] = level;
        edges ??= [];
        edges.push(edgeOf(known[i].spec, level === 1));
      }
      open.looked(moment, quiet);
      return edges ?? none;
    },
    snapshot: () => state.slice(),
    restore(from) {
      open.forget();
      state.set(from);
    },
  };
}

/** Whether a watch stays as it is while nothing happens: one that counts steps does only where it does not hold. */
function settledOf(spec: WatchSpec, table: SignalTable): (moment: Moment) => ReturnType<Settled> | null {
  const condition = 'rest' in spec ? spec.during : spec.when;
  const holds = condition === undefined ? () => null : settled(condition, table);
  if (!('rest' in spec) && spec.heldS === undefined) return holds;
  return (moment) => (holds(moment) === false ? false : null);
}

function edgeOf({ id, notable }: WatchSpec, rises: boolean): Edge {
  const to = rises ? 'rise' : 'fall';
  return { id, to, notable: notable === to || notable === 'both' };
}

function lookOf(spec: WatchSpec, table: SignalTable): Look | null {
  const needed = Math.round((spec.heldS ?? 0) * STEPS_PER_SECOND);
  try {
    if ('rest' in spec) return restLook(spec, table, needed);
    const holds = compileCondition(spec.when, table);
    if (needed === 0) return holds;
    return (moment, state, at, isStep) => {
      if (!holds(moment)) state[at + HELD] = 0;
      else if (isStep) state[at + HELD] += 1;
      return state[at + HELD] >= needed;
    };
  } catch (error) {
    if (error instanceof ConditionError) return null;
    throw error;
  }
}

function restLook({ rest, within, during }: RestWatch, table: SignalTable, needed: number): Look {
  const [index] = matchingSignals(rest, table);
  const counts = during === undefined ? null : compileCondition(during, table);
  return (moment, state, at, isStep) => {
    const value = counts === null || counts(moment) ? moment.value(index) : Number.NaN;
    const strayed = !(Math.abs(value - state[at + REFERENCE]) <= within);
    if (strayed) {
      state[at + REFERENCE] = value;
      state[at + HELD] = 0;
    } else if (isStep) state[at + HELD] += 1;
    return state[at + HELD] >= needed;
  };
}
