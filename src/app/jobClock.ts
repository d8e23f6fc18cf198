/**
 * The job clock of the worker: how many steps of 20 ms the next slice runs. Held, a lapse (job seconds per wall second),
 * or a run-on of an exact number of steps or until something notable happens, then held. Wall time only decides when
 * steps are run, never what they do.
 */
import type { Lapse, RunOn } from '../panels/sessionModel';
import { STEPS_PER_SECOND } from '../session/clock';

export interface JobClock {
  readonly lapse: Lapse;
  readonly runningOn: RunOn | null;
  readonly behind: boolean;
  setLapse(lapse: Lapse): void;
  startRunOn(how: RunOn): void;
  pause(paused: boolean): void;
  /** A hand did something: what rests after it is news again. */
  acted(): void;
  /** Steps due since the last slice, and whether to stop at something notable. */
  due(wallMs: number): { readonly steps: number; readonly untilNotable: boolean };
  /** Books what was run; true where a run-on or a lapse ended with it. */
  ran(steps: number, notable: string | null, stuck: boolean): boolean;
}

const RUN_ON_STEPS: Readonly<Record<Exclude<RunOn, number>, number>> = {
  '10s': 10 * STEPS_PER_SECOND,
  '1min': 60 * STEPS_PER_SECOND,
  '5min': 300 * STEPS_PER_SECOND,
  notable: 3600 * STEPS_PER_SECOND,
};
/** Most wall time one slice may make up for, ms; what is older is dropped (the clock says it is behind). */
const CATCH_UP_MS = 250;
const MS_PER_S = 1000;
/** What comes to rest, moves on a little and rests again by itself tells a lapse of it once. */
const isRest = (notable: string): boolean => notable.endsWith('Rests');

export function jobClock(): JobClock {
  let lapse: Lapse = 0;
  let runningOn: RunOn | null = null;
  let stepsLeft = 0;
  let paused = false;
  let lastWallMs = Number.NaN;
  let owedSteps = 0;
  let behind = false;
  const rested = new Set<string>();

  const hold = (): void => {
    lapse = 0;
    runningOn = null;
    owedSteps = 0;
  };
  const owed = (wallMs: number): number => {
    const sinceMs = Number.isNaN(lastWallMs) ? 0 : wallMs - lastWallMs;
    lastWallMs = wallMs;
    behind = sinceMs > CATCH_UP_MS && lapse > 0;
    owedSteps += (Math.min(sinceMs, CATCH_UP_MS) / MS_PER_S) * lapse * STEPS_PER_SECOND;
    return Math.floor(owedSteps);
  };
  return {
    get lapse() {
      return lapse;
    },
    get runningOn() {
      return runningOn;
    },
    get behind() {
      return behind;
    },
    setLapse(next) {
      runningOn = null;
      owedSteps = 0;
      lapse = next;
    },
    startRunOn(how) {
      hold();
      runningOn = how;
      stepsLeft = typeof how === 'number' ? how : RUN_ON_STEPS[how];
    },
    pause(next) {
      paused = next;
      lastWallMs = Number.NaN;
    },
    acted: () => rested.clear(),
    due(wallMs) {
      if (paused) return { steps: 0, untilNotable: false };
      if (runningOn !== null) {
        lastWallMs = wallMs;
        return { steps: stepsLeft, untilNotable: runningOn === 'notable' };
      }
      const steps = owed(wallMs);
      return { steps: lapse === 0 ? 0 : steps, untilNotable: lapse > 1 };
    },
    ran(steps, notable, stuck) {
      if (runningOn !== null) {
        stepsLeft -= steps;
        if (stepsLeft > 0 && !(runningOn === 'notable' && notable !== null) && !stuck) return false;
        hold();
        return true;
      }
      owedSteps = Math.max(0, owedSteps - steps);
      if (stuck && lapse !== 0) {
        hold();
        return true;
      }
      if (notable === null || lapse <= 1 || rested.has(notable)) return false;
      if (isRest(notable)) rested.add(notable);
      lapse = 1;
      owedSteps = 0;
      return true;
    },
  };
}
