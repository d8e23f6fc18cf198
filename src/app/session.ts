/**
 * A running session for panels: the worker's messages as signals of the page. Needles follow each frame (`pulse`),
 * whatever else reads a channel follows when it is told. Nothing here decides anything.
 */
import { createEffect, createRoot, createSignal, on } from 'solid-js';
import { layoutOf, loadLayout } from '../layout/layouts';
import { loadVehicle } from '../loop/car/vehicles';
import type { DebriefData } from '../panels/debriefModel';
import { newlyHappened } from '../panels/newlyHappened';
import type { ClockState, Notice, SessionModel } from '../panels/sessionModel';
import { STEPS_PER_SECOND } from '../session/clock';
import type { SessionLog, SessionView } from '../session/corePort';
import { type CoreClient, startCore } from './coreClient';
import { findJob } from './findJob';
import { gaugeHistory } from './gaugeHistory';
import { keptSame } from './keptSame';
import { language } from './language';
import { sessionNames } from './names';
import { failureWords, happeningWords, refusalWords, watchWords } from './notices';
import type { FromWorker, Opened, OpenRequest, Seen } from './protocol';
import { factsSpoken } from './scenarioFacts';
import { settings } from './settings';
import { bayLabelOf, sheetsOf } from './sheets';
import { storageRefused } from './storage';
import { toldOf } from './told';
import { toldDebrief } from './toldDebrief';

export interface RunningSession {
  readonly model: SessionModel;
  readonly opened: Opened;
  /** Changes whenever what the frames brought is told. */
  readonly told: () => number;
  /** Changes a picture before something is told, a view or that. */
  readonly telling: () => number;
  readonly debrief: () => DebriefData | null;
  readonly failure: () => string | null;
  askDebrief(): void;
  /** What the worker needs at the end is fetched ahead. */
  fetchEnd(): void;
  /** Where what was lived for the debrief can be taken, once. */
  readonly lent: MessagePort;
  /** The session as far as it has come, as a file that can be run again; null where the model failed at it. */
  sessionFile(): Promise<string | null>;
}

export interface SessionHooks {
  readonly onLog: (log: Extract<FromWorker, { type: 'log' }>['log']) => void;
  /** How much of a log has been run again, 0 to 1. */
  readonly onRanAgain: (share: number) => void;
  readonly readOnly: () => boolean;
  /** Whoever asked has gone: it ends, opened or not. */
  readonly leaving: AbortSignal;
}

const NOTICE_MS = 6000;

export async function openRunningSession(request: OpenRequest, hooks: SessionHooks): Promise<RunningSession> {
  const data = await findJob(request.scenarioId);
  if (!data) throw new RangeError(request.scenarioId);
  await Promise.all([loadVehicle(data.vehicle), loadLayout(data.vehicle)]);
  const [seen, setSeen] = createSignal<Seen>({
    view: null as unknown as SessionView,
    choices: null as unknown as Seen['choices'],
    probes: {},
  });
  const [telling, setTelling] = createSignal(0);
  const [told, setTold] = createSignal(0);
  const [pulse, setPulse] = createSignal(0);
  const [clock, setClock] = createSignal<ClockState>({
    step: 0,
    seconds: 0,
    lapse: 0,
    runningOn: null,
    behind: false,
  });
  const [notice, setNotice] = createSignal<Notice | null>(null);
  const [debrief, setDebrief] = createSignal<DebriefData | null>(null);
  const [failure, setFailure] = createSignal<string | null>(null);
  const channelIndex = new Map<string, number>();
  let frame = new Float64Array(0);
  let latest = clock();
  let saturation: Opened['saturation'] | null = null;
  let rubric: Opened['rubric'] | null = null;
  let serial = 0;
  let noticeTimer = 0;
  let client: CoreClient;
  let isOpened = false;

  const tell = (icon: Notice['icon'], text: string): void => {
    serial++;
    setNotice({ icon, text, serial });
    clearTimeout(noticeTimer);
    noticeTimer = window.setTimeout(() => setNotice(null), NOTICE_MS);
  };
  const tellNews = (before: SessionView, now: SessionView): void => {
    const newest = newlyHappened(before, now).at(-1);
    const words = newest && happeningWords(newest, named);
    if (words) tell('note', words);
  };
  let log: SessionLog | null = null;
  const wantsFile: ((file: string | null) => void)[] = [];
  const giveFile = (file: string | null): void => {
    for (const give of wantsFile.splice(0)) give(file);
  };
  let untold: DebriefData | null = null;
  let toldIn: string | null = null;
  const showDebrief = async (data: DebriefData): Promise<void> => {
    const spoken = language();
    untold = data;
    toldIn = spoken;
    const told = await toldDebrief(data, request.scenarioId, facts().country);
    if (untold === data && toldIn === spoken) setDebrief(told);
  };
  /** Told once more where the page's language has changed since. */
  const tellAgain = (): void => {
    if (untold !== null && toldIn !== language()) void showDebrief(untold);
  };
  const deafen = createRoot((dispose) => {
    createEffect(on(language, tellAgain, { defer: true }));
    return dispose;
  });
  const other = (message: Exclude<FromWorker, { type: 'opened' | 'frame' | 'seen' | 'outcome' }>): void => {
    if (message.type === 'log') {
      log = message.log;
      hooks.onLog(log);
    } else if (message.type === 'ranAgain') hooks.onRanAgain(message.share);
    else if (message.type === 'file') giveFile(message.file);
    else if (message.type === 'debriefed' || message.type === 'weighed') void showDebrief(message.debrief);
    else if (message.type === 'failed') {
      giveFile(null);
      setFailure(failureWords(message));
    } else if (message.type === 'clockFell')
      tell('clock', watchWords(message.to, message.notable, message.step));
  };
  const lending = new MessageChannel();
  const facts = factsSpoken(data);
  const layout = layoutOf(data.vehicle);
  const nameOf = sessionNames(layout, request.mode, () => seen().view);
  const named = (id: string): string => toldOf(request.scenarioId).papers[id]?.title ?? nameOf(id);
  const history = gaugeHistory();
  const model = (): SessionModel => ({
    get facts() {
      return facts();
    },
    layout,
    mode: request.mode,
    seed: request.seed,
    readOnly: hooks.readOnly,
    keepsNothing: storageRefused,
    view: () => seen().view,
    pulse,
    signal(id) {
      told();
      const index = channelIndex.get(id);
      return index === undefined ? Number.NaN : frame[index];
    },
    clock,
    units: () => settings().units,
    saturation: () => saturation,
    rubric: () => rubric,
    notice,
    sheets: () => sheetsOf(data, settings().units, seen().view.conversionLabel),
    bayLabel: () => bayLabelOf(data, seen().view.conversionLabel),
    canPrint: data.bench.refrigerant,
    choices: (set) => seen().choices[set],
    probeAt(instrument) {
      const at = seen().probes[instrument];
      return at === undefined ? null : named(at);
    },
    placeOf: (instrument) => seen().probes[instrument] ?? null,
    history: (channel) => history.of(channel),
    happened: () => history.happened().map((one) => ({ ...one, said: happeningWords(one, named) ?? '' })),
    nameOf: named,
    send(command) {
      if (hooks.readOnly()) return;
      // nothing keeps a job from beginning, so it is written down before the core answers
      if (command.do === 'begin' && log?.commands.length === 0)
        hooks.onLog({ ...log, commands: [{ step: log.lastStep, command }] });
      void client.send(command).then((outcome) => {
        if (!outcome.ok) tell('cross', refusalWords(outcome.reason, outcome.params, named));
      });
    },
    setLapse(lapse, why) {
      if (hooks.readOnly()) return;
      client.setLapse(lapse);
      latest = { ...latest, lapse, runningOn: null };
      setClock(latest);
      if (why) tell('clock', why);
    },
    runOn: (how) => hooks.readOnly() || client.runOn(how),
  });
  const end = (): void => {
    clearTimeout(noticeTimer);
    deafen();
    client.dispose();
  };
  const see = ({ view, choices, probes }: Seen): void => {
    const before = seen().view;
    history.note(newlyHappened(before, view));
    setSeen((was) => keptSame(was, { view, choices, probes }));
    tellNews(before, view);
  };
  return new Promise((resolve, reject) => {
    client = startCore(request, {
      opened(message) {
        isOpened = true;
        message.channels.forEach((channel, index) => {
          channelIndex.set(channel.id, index);
        });
        frame = new Float64Array(message.channels.length).fill(Number.NaN);
        saturation = message.saturation;
        rubric = message.rubric;
        history.goOn(message.past, message.view.happened);
        setSeen(message);
        const { step } = message.view;
        latest = { ...latest, step, seconds: step / STEPS_PER_SECOND };
        setClock(latest);
        resolve({
          model: model(),
          opened: message,
          told,
          telling,
          debrief,
          failure,
          askDebrief: () => client.askDebrief(lending.port1),
          fetchEnd: client.fetchEnd,
          lent: lending.port2,
          sessionFile: () =>
            new Promise((resolveFile) => {
              wantsFile.push(resolveFile);
              client.askFile();
            }),
        });
      },
      frame(message) {
        frame.set(message.frame);
        const { step, lapse, runningOn, behind } = message;
        latest = { step, seconds: step / STEPS_PER_SECOND, lapse, runningOn, behind };
        history.add(message.step, (id) => frame[channelIndex.get(id) ?? -1] ?? Number.NaN);
        setPulse((count) => count + 1);
      },
      telling: () => setTelling((count) => count + 1),
      seen: see,
      told() {
        setClock(latest);
        setTold((count) => count + 1);
      },
      other(message) {
        other(message);
        if (message.type !== 'failed') return;
        reject(new Error(failureWords(message)));
        // nobody holds a session that never opened
        if (!isOpened) end();
      },
    });
    hooks.leaving.addEventListener('abort', end);
    if (hooks.leaving.aborted) end();
  });
}
