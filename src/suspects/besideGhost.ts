/**
 * A session with the healthy ghost beside it: the ghost gets every command and every step that the session's own plant
 * gets, and what it shows comes at the end of each frame. Going back takes it along: a checkpoint each simulated minute,
 * then on from what still holds of the log, as the session itself does. Costs one plant more a step.
 *
 * Not for an assessed session: its frames hold no truth.
 */
import type { PlantOptions } from '../plant/buildPlant';
import type { PlantSnapshot } from '../plant/plantPort';
import type { SignalSpec } from '../plant/signalTypes';
import { STEPS_PER_MINUTE } from '../session/clock';
import type { SessionCore } from '../session/corePort';
import { liveLog } from '../session/liveLog';
import type { HeedRun } from '../session/sessionCore';
import { healthyGhost } from './expectedWindow';

interface Checkpoint {
  readonly step: number;
  /** How many commands of the live log it has had. */
  readonly commands: number;
  readonly plant: PlantSnapshot;
}

const truth = (id: string, unit: string): SignalSpec => ({ id, unit, kind: 'truth' });
const WINDOW: readonly SignalSpec[] = ['lowSide', 'highSide'].flatMap((side) => [
  truth(`expected.${side}.fromGaugePressurePa`, 'Pa'),
  truth(`expected.${side}.toGaugePressurePa`, 'Pa'),
]);

/** `heedRun` is told each simulated minute that the ghost catches up with a session that has come this far. */
export function besideGhost(core: SessionCore, options: PlantOptions, heedRun?: HeedRun): SessionCore {
  const ghost = healthyGhost(options);
  const expected = [...WINDOW, ...ghost.insideSpecs.map(({ id, unit }) => truth(`expected.${id}`, unit))];
  let commands = 0;
  let checkpoints: Checkpoint[] = [{ step: 0, commands, plant: ghost.snapshot() }];

  let heed = heedRun;
  const runTo = (step: number): void => {
    while (ghost.step < step) {
      ghost.advance();
      if (ghost.step % STEPS_PER_MINUTE !== 0) continue;
      checkpoints.push({ step: ghost.step, commands, plant: ghost.snapshot() });
      heed?.(ghost.step);
    }
  };
  const catchUp = (): void => {
    for (const { step, command } of liveLog(core.log().commands).slice(commands)) {
      runTo(step);
      ghost.perform(command);
      commands++;
    }
    runTo(core.step);
  };
  const goBackTo = (step: number): void => {
    checkpoints = checkpoints.filter((one) => one.step <= step);
    const from = checkpoints[checkpoints.length - 1];
    ghost.restore(from.plant);
    commands = from.commands;
  };
  catchUp();
  heed = undefined;
  return {
    ...core,
    get step() {
      return core.step;
    },
    channels: [...core.channels, ...expected],
    send(command) {
      const outcome = core.send(command);
      if (!outcome.ok) return outcome;
      if (command.do === 'rewind') goBackTo(Number(command.step));
      catchUp();
      return outcome;
    },
    advance(steps, untilNotable) {
      const advanced = core.advance(steps, untilNotable);
      runTo(core.step);
      return advanced;
    },
    writeFrame(out) {
      core.writeFrame(out);
      const { low, high } = ghost.window();
      out.set(
        [low.fromGaugePa, low.toGaugePa, high.fromGaugePa, high.toGaugePa, ...ghost.inside()],
        core.channels.length,
      );
    },
  };
}
