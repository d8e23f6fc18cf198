/**
 * A ghost that lives along with the session of somebody who asks: every command at its own step, and each second looked on
 * as that person looks. So it shows what such a car would have shown then and there, whatever was done and however long it
 * took; a forecast only knows its own moments.
 */
import type { PlantOptions } from '../../plant/buildPlant';
import { STEPS_PER_SECOND } from '../../session/clock';
import type { LoggedCommand } from '../../session/corePort';
import type { GhostSpec } from '../../suspects/causes';
import { buildGhost } from '../../suspects/ghost';
import { folded } from '../forecast/folded';
import type { Seen } from './doubtOf';

export interface Companion {
  readonly spec: GhostSpec;
  /** `log` is the session's from its start, and longer each time. */
  liveTo(log: readonly LoggedCommand[], step: number): void;
  /** NaN where there is nothing to read, or where it was not looked at. */
  shows(seen: Seen): number;
  /** Lived so far. */
  steps(): number;
}

/** `signals` are those that may be asked for. */
export function companionOf(options: PlantOptions, spec: GhostSpec, signals: readonly string[]): Companion {
  const ghost = buildGhost(options, spec);
  const { plant } = ghost;
  const has = new Set(plant.signals.map(({ id }) => id));
  const kept = signals.filter((signal) => has.has(signal));
  const at = kept.map((signal) => plant.signalIndex(signal));
  const film = new Map<number, Float64Array>();
  let done = 0;
  const runTo = (step: number): void => {
    while (plant.step < step) {
      ghost.runTo(Math.min(step, plant.step - (plant.step % STEPS_PER_SECOND) + STEPS_PER_SECOND));
      if (plant.step % STEPS_PER_SECOND === 0) film.set(plant.step, Float64Array.from(at, plant.value));
    }
  };
  return {
    spec,
    liveTo(log, step) {
      for (; done < log.length && log[done].step <= step; done++) {
        runTo(log[done].step);
        ghost.perform(log[done].command);
      }
      runTo(step);
    },
    steps: () => plant.step,
    shows({ probe, signal, steps }) {
      const own = kept.indexOf(signal);
      return folded(
        probe.fold,
        steps.map((step) => film.get(step)?.[own] ?? Number.NaN),
      );
    },
  };
}
