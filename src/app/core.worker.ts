/**
 * The worker that holds the session core and runs its clock. It answers commands, sends a frame whenever the page has given
 * its buffer back, and the view whenever its revision changed. It decides nothing that the core does not decide. What
 * only the end of a session needs is fetched then.
 */
import { type Command, commandSpecs } from '../plant/commandSpecs';
import type { SessionCore } from '../session/corePort';
import { BrokenLogError, OtherLogError } from '../session/logProblem';
import type { Scenario } from '../session/scenario/scenario';
import { type JobClock, jobClock } from './jobClock';
import { openCore } from './openCore';
import type { FromWorker, OpenRequest, ToWorker } from './protocol';
import type { RerunDoor } from './rerunDoor';
import { choicesOf, probesOf } from './seenOf';

const SLICE_MS = 12;
const TICK_MS = 16;
/** Steps between two looks at the wall clock. */
const CHUNK_STEPS = 25;
const LOG_EVERY_MS = 2000;

const clock: JobClock = jobClock();
const buffers: Float64Array[] = [];
let core: SessionCore | null = null;
let scenario: Scenario | null = null;
let shownRevision = -1;
let lastLogMs = 0;
let lastFrameStep = -1;
let lastFrameRevision = -1;
let lapseSerial = 0;

/** Something at the car or at the bench; what is only written down moves no needle. */
const isDeed = ({ do: verb }: Command): boolean =>
  verb !== 'note-reading' && commandSpecs[verb as keyof typeof commandSpecs]?.group !== 'card';

const post = (message: FromWorker, transfer: Transferable[] = []): void =>
  self.postMessage(message, { transfer });

let door: Promise<RerunDoor> | null = null;
/** What-if is fetched when it is first asked for; wishes come in the order they were made. */
function reruns(): Promise<RerunDoor> {
  door ??= import('./rerunDoor').then(({ rerunDoor }) => rerunDoor(post));
  return door;
}

/** While the network is there; what does not come now is asked for again when it is needed. */
async function fetchEnd(): Promise<void> {
  await reruns();
  await (await import('./tellDebrief')).fetchGases();
}

async function open(request: OpenRequest): Promise<void> {
  const started = performance.now();
  const made = await openCore(request, (share) => post({ type: 'ranAgain', share }));
  core = made.core;
  scenario = made.scenario;
  const view = core.view();
  shownRevision = view.revision;
  post({
    type: 'opened',
    view,
    choices: choicesOf(core),
    probes: probesOf(core),
    channels: core.channels,
    saturation: made.saturation,
    rubric: made.rubric,
    past: made.past,
    stateHash: core.stateHash(),
    replaySeconds: (performance.now() - started) / 1000,
  });
  post({ type: 'log', log: core.log() });
}

function tellView(held: SessionCore): void {
  const view = held.view();
  if (view.revision === shownRevision) return;
  shownRevision = view.revision;
  post({ type: 'seen', view, choices: choicesOf(held), probes: probesOf(held) });
}

function tellFrame(held: SessionCore): void {
  const still = held.step === lastFrameStep && shownRevision === lastFrameRevision;
  const frame = still ? undefined : buffers.pop();
  if (!frame) return;
  lastFrameStep = held.step;
  lastFrameRevision = shownRevision;
  held.writeFrame(frame);
  const { lapse, runningOn, behind } = clock;
  const message = { type: 'frame', frame, step: held.step, lapse, lapseSerial, runningOn, behind } as const;
  post(message, [frame.buffer as ArrayBuffer]);
}

function tellLog(held: SessionCore): void {
  lastLogMs = performance.now();
  post({ type: 'log', log: held.log() });
}

/** Runs what is due, at most a slice of wall time; what is left over is due next time. */
function run(held: SessionCore): void {
  const started = performance.now();
  const { steps, untilNotable } = clock.due(started);
  let left = steps;
  while (left > 0 && performance.now() - started < SLICE_MS) {
    const wanted = Math.min(left, CHUNK_STEPS);
    const { stepsDone, notable } = held.advance(wanted, untilNotable);
    left -= stepsDone;
    const stuck = stepsDone < wanted && notable === null;
    if (!clock.ran(stepsDone, notable, stuck)) continue;
    post({ type: 'clockFell', to: clock.lapse, notable, step: held.step });
    lastFrameStep = -1;
    // the clock may stand from here on
    tellLog(held);
    break;
  }
  if (steps > 0 && started - lastLogMs >= LOG_EVERY_MS) tellLog(held);
}

function tick(): void {
  if (core) {
    run(core);
    tellView(core);
    tellFrame(core);
  }
  setTimeout(tick, TICK_MS);
}

async function act(message: ToWorker): Promise<void> {
  if (message.type === 'open') await open(message.request);
  if (message.type === 'rerun') await (await reruns())(message.ask);
  if (message.type === 'fetchEnd') fetchEnd().catch(() => undefined);
  if (!core) return;
  switch (message.type) {
    case 'command': {
      const outcome = core.send(message.command);
      if (outcome.ok) {
        if (isDeed(message.command)) clock.acted();
        tellLog(core);
      }
      tellView(core);
      post({ type: 'outcome', serial: message.serial, outcome });
      break;
    }
    case 'lapse':
      clock.setLapse(message.lapse);
      tellLog(core);
      lapseSerial = message.serial;
      lastFrameStep = -1;
      break;
    case 'runOn':
      clock.startRunOn(message.how);
      break;
    case 'pause':
      clock.pause(message.paused);
      tellLog(core);
      break;
    case 'buffer':
      buffers.push(message.frame);
      break;
    case 'file':
      if (scenario) post({ type: 'file', file: (await import('./debriefOf')).sessionFileOf(scenario, core) });
      break;
    case 'debrief':
      if (scenario) await (await import('./tellDebrief')).tellDebrief(post, core, scenario, message.lend);
      break;
  }
}

self.onmessage = (event: MessageEvent<ToWorker>): void => {
  act(event.data).catch((error: unknown) => {
    const reason = error instanceof Error ? error.message : String(error);
    if (error instanceof OtherLogError) return post({ type: 'failed', reason, other: error.other });
    if (!(error instanceof BrokenLogError)) return post({ type: 'failed', reason });
    const { number, reason: why, params } = error;
    post({ type: 'failed', reason, broken: { number, reason: why, params } });
  });
};
tick();
