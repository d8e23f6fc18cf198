/**
 * The controller as the core uses it: an unchanging snapshot, moved by events. A checkpoint is where it stands, as plain data.
 * Every change of a region is told as a transition `{ region, from, on, to }`.
 */
import { getMicrosteps, initialTransition, type SnapshotFrom, type StateValue } from 'xstate';
import type { Mode, RegionChange } from '../corePort';
import { sessionMachine } from './sessionMachine';
import type { ControllerEvent } from './sessionSetup';

type Standing = SnapshotFrom<typeof sessionMachine>;

export type ControllerSnapshot = StateValue;

/** `region` is `session` for the order of the whole, or one of the regions of `work`. */
export type Transition = RegionChange;

export interface Controller {
  readonly phase: string;
  readonly regions: Readonly<Record<string, string>>;
  hear(event: ControllerEvent): readonly Transition[];
  snapshot(): ControllerSnapshot;
  restore(snapshot: ControllerSnapshot): void;
}

export function controller(mode: Mode): Controller {
  let [current] = initialTransition(sessionMachine, { mode });
  // asked for at every step, and another only when something is heard
  let regions = placesOf(current);
  return {
    get phase() {
      return regions.session;
    },
    get regions() {
      return regions;
    },
    hear(event) {
      const steps = getMicrosteps(sessionMachine, current, event);
      const walked: Transition[] = [];
      let on: string = event.type;
      for (const [next] of steps) {
        const before = regions;
        current = next;
        regions = placesOf(current);
        walked.push(...changes(before, regions, on));
        on = 'always';
      }
      return walked;
    },
    snapshot: () => current.value,
    restore(snapshot) {
      current = sessionMachine.resolveState({ value: snapshot, context: { mode } });
      regions = placesOf(current);
    },
  };
}

/** Where the machine stands, region by region. */
function placesOf({ value }: Standing): Record<string, string> {
  if (typeof value === 'string') return { session: value };
  const [[session, regions]] = Object.entries(value);
  return { session, ...(regions as Record<string, string>) };
}

function changes(before: Record<string, string>, after: Record<string, string>, on: string): Transition[] {
  return Object.keys(after)
    .filter((region) => before[region] !== undefined && before[region] !== after[region])
    .map((region) => ({ region, from: before[region], on, to: after[region] }));
}
