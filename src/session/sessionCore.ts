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
import { gate } from './gate';
import { goneBackTo, isRewind, liveLog } from './liveLog';
import { BrokenLogError, numberOf, refuseDisorder, refuseOther } from './logProblem';
import { type Observer, type RunSnapshot, type SessionJob, type SessionRun, sessionRun } from './sessionRun';
import { sessionView } from './sessionView';
import { toldOutcome } from './toldEvents';

export interface CoreOptions {
  readonly job: SessionJob;
  readonly seed: number;
  readonly mode: Mode;
  readonly plant: Plant;
  /** Run this log first: the session stands where it stood. Throws `OtherLogError`, `BrokenLogError`. */
  readonly log?: SessionLog;
  /** Told each simulated minute of that log. */
  readonly heedRun?: HeedRun | undefined;
  readonly observe?: Observer;
}

/** How far a log that is run again has come. */
export type HeedRun = (step: number) => void;

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

export function sessionCore({ job, seed, mode, plant, log, heedRun, observe }: CoreOptions): SessionCore {
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

  /** Runs a log that was handed in: each command has to pass what it would have had to pass when it was given. */
  const runGiven = (given: SessionLog): void => {
    refuseOther(given, { engineHash, scenarioHash: job.scenarioHash });
    refuseDisorder(given);
    commands = [...given.commands];
    const runTo = (step: number, number: number): void => {
      for (; plant.step < step; stepOnce()) {
        if (!clockMayRun()) throw standing(run, number);
        if (plant.step % STEPS_PER_MINUTE === 0) heedRun?.(plant.step);
      }
    };
    commands.forEach(({ command }, at) => {
      const problem = shapeProblem(command);
      if (problem) throw new BrokenLogError(at + 1, problem.reason, problem.params);
    });
    for (const entry of liveLog(commands)) {
      const number = numberOf(commands, entry);
      runTo(entry.step, number);
      const problem = isRewind(entry) ? null : gate(run, mode, job, entry.command);
      if (problem) throw new BrokenLogError(number, problem.reason, problem.params);
      const outcome = run.perform(entry.command);
      if (!outcome.ok) throw new BrokenLogError(number, outcome.reason, outcome.params);
      live.push(entry);
    }
    runTo(given.lastStep, 0);
  };
  if (log) runGiven(log);
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

/** The clock ran on in a log where it had to stand. */
function standing({ controller: { phase } }: SessionRun, number: number): BrokenLogError {
  const reason = phase === 'briefing' ? 'notBegun' : phase === 'work' ? 'stopped' : 'over';
  return new BrokenLogError(number, `session.refused.${reason}`);
}
