/**
 * The session core: who may command what and when, the log, checkpoints and going back. Synchronous; the same object runs
 * in a worker, on the command line and in tests.
 *
 * A checkpoint is taken each simulated minute, before the commands given at that step. Going back restores the last one
 * before the wanted step and runs on from the log.
 */
import { hashText } from '../numerics/hash';
import type { Command, IdSet, Outcome } from '../plant/commandSpecs';
import type { Plant } from '../plant/plantPort';
import { canonicalJson } from './canonicalJson';
import { STEPS_PER_MINUTE } from './clock';
import { asCommand, shapeProblem } from './commandShape';
import type { Advance, LoggedCommand, Mode, SessionCore, SessionLog, SessionView } from './corePort';
import { engineHash } from './engineHash';
import { goneBackTo, isRewind, liveLog } from './liveLog';
import { type Observer, type RunSnapshot, type SessionJob, type SessionRun, sessionRun } from './sessionRun';
import { sessionView } from './sessionView';
import { toldOutcome } from './toldEvents';

export interface CoreOptions {
  readonly job: SessionJob;
  readonly seed: number;
  readonly mode: Mode;
  readonly plant: Plant;
  /** Run this log first: the session stands where it stood. */
  readonly log?: SessionLog;
  readonly observe?: Observer;
}

interface Checkpoint {
  readonly step: number;
  /** How many live commands came before it. */
  readonly commands: number;
  readonly run: RunSnapshot;
}

const refused = (reason: string, params: Record<string, string> = {}): Outcome => ({
  ok: false,
  reason,
  params,
});

export function sessionCore({ job, seed, mode, plant, log, observe }: CoreOptions): SessionCore {
  const run = sessionRun(job, mode, plant, observe);
  const shown = plant.signals.flatMap((signal, index) =>
    mode === 'assessed' && signal.kind === 'truth' ? [] : [index],
  );
  const channels = shown.map((index) => plant.signals[index]);
  let commands: LoggedCommand[] = [];
  let live: LoggedCommand[] = [];
  run.hear({ type: 'plantBuilt' });
  let checkpoints: Checkpoint[] = [{ step: 0, commands: 0, run: run.snapshot() }];

  const stepOnce = (): string | null => {
    const notable = run.step();
    if (plant.step % STEPS_PER_MINUTE === 0) {
      checkpoints.push({ step: plant.step, commands: live.length, run: run.snapshot() });
    }
    return notable;
  };
  /** Runs `wanted` from where the session stands; its first `done` entries are behind it already. */
  const runLive = (wanted: readonly LoggedCommand[], done: number, lastStep: number): void => {
    for (const entry of wanted.slice(done)) {
      while (plant.step < entry.step) stepOnce();
      run.perform(entry.command);
      live.push(entry);
    }
    while (plant.step < lastStep) stepOnce();
  };
  const goBack = (command: Command): void => {
    const toStep = Number(command.step);
    const wanted = [...goneBackTo(live, toStep), { step: toStep, command }];
    checkpoints = checkpoints.filter(({ step }) => step <= toStep);
    const from = checkpoints[checkpoints.length - 1];
    run.restore(from.run);
    live = wanted.slice(0, from.commands);
    runLive(wanted, from.commands, toStep);
  };
  const send = (given: Command): Outcome => {
    const problem = shapeProblem(given) ?? gate(run, mode, job, given);
    if (problem) return refused(problem.reason, { ...problem.params });
    const command = asCommand(given);
    const entry: LoggedCommand = { step: plant.step, command: { ...command } };
    if (isRewind(entry)) {
      commands.push(entry);
      goBack(entry.command);
      return { ok: true, events: [{ id: 'went-back' }] };
    }
    const outcome = run.perform(entry.command);
    if (!outcome.ok) return outcome;
    commands.push(entry);
    live.push(entry);
    return toldOutcome(outcome, mode);
  };
  const sessionLog = (): SessionLog => ({
    format: 'portside-session-1',
    scenarioId: job.scenarioId,
    scenarioHash: job.scenarioHash,
    engineHash,
    seed,
    mode,
    commands: [...commands],
    lastStep: plant.step,
  });
  const clockMayRun = (): boolean => run.controller.phase === 'work' && run.book.stopped === null;

  if (log) {
    commands = [...log.commands];
    runLive(liveLog(commands), 0, log.lastStep);
  }
  return {
    get step() {
      return plant.step;
    },
    mode,
    channels,
    send,
    advance(steps, untilNotable = false): Advance {
      let stepsDone = 0;
      while (stepsDone < steps && clockMayRun()) {
        const notable = stepOnce();
        stepsDone++;
        if (untilNotable && notable !== null) return { stepsDone, notable };
      }
      return { stepsDone, notable: null };
    },
    writeFrame(out) {
      for (let i = 0; i < shown.length; i++) out[i] = plant.value(shown[i]);
    },
    view: (): SessionView => sessionView(job, run, mode),
    log: sessionLog,
    logHash: () => hashText(canonicalJson(sessionLog())),
    stateHash: () => plant.stateHash(),
    choices: (set: IdSet) => plant.choices(set),
    wouldRefuse(given) {
      const problem = shapeProblem(given) ?? gate(run, mode, job, given);
      if (problem) return problem;
      if (given.do === 'rewind' || given.do === 'begin' || given.do === 'finish' || given.do === 'hint')
        return null;
      const before = plant.snapshot();
      const outcome = plant.apply(given);
      plant.restore(before);
      return outcome.ok ? null : { reason: outcome.reason, params: outcome.params };
    },
    markScored: () => run.hear({ type: 'scored' }),
  };
}

/** What the session itself forbids now: before it began, after it ended, while it is stopped, by mode. */
function gate(run: SessionRun, mode: Mode, job: SessionJob, command: Command) {
  const no = (reason: string, params: Record<string, string> = {}) => ({
    reason: `session.refused.${reason}`,
    params,
  });
  const { phase } = run.controller;
  const { stopped } = run.book;
  if (phase === 'briefing') return command.do === 'begin' ? null : no('notBegun');
  if (phase !== 'work') return no('over');
  if (stopped !== null) return command.do === 'rewind' || command.do === 'begin' ? null : no('stopped');
  if (command.do === 'begin') return no('hasBegun');
  if (command.do === 'rewind') {
    if (mode === 'assessed') return no('noGoingBack');
    return Number(command.step) > run.plant.step ? no('notYetLived') : null;
  }
  if (command.do === 'hint') {
    if (mode === 'assessed') return no('noHints');
    return Number(command.level) > job.hintLevels
      ? no('noSuchHint', { levels: String(job.hintLevels) })
      : null;
  }
  return null;
}
