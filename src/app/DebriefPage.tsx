/** The debrief as a page: asks the worker for it, keeps the best result, offers the session file. */
import './styles/debriefPage.css';
import { createEffect, createMemo, onMount, Show, untrack } from 'solid-js';
import { Debrief } from '../panels/Debrief';
import type { DebriefData, DebriefModel } from '../panels/debriefModel';
import { Loading } from '../panels/Loading';
import { modeName } from '../panels/Shelf';
import type { SessionModel } from '../panels/sessionModel';
import type { Mode, SessionLog } from '../session/corePort';
import { sessionFileText } from '../session/sessionFileText';
import { word } from '../words/words';
import { keepResult } from './bestResults';
import { branchAt } from './branchAt';
import { type DebriefSitting, debriefSitting } from './debriefSitting';
import { nextJobs } from './nextJobs';
import { hashOfOwn } from './ownId';
import { forgetLog } from './savedSession';
import { saveFile } from './saveFile';
import type { RunningSession } from './session';
import { settings } from './settings';

export interface DebriefPageProps {
  readonly session: RunningSession;
  /** The sitting over this debrief, made where there is none yet. */
  readonly sitting: (make: () => DebriefSitting) => DebriefSitting;
  /** How much of the session has been run again for it. */
  readonly ranAgain: number;
  readonly onHome: () => void;
  readonly onAgain: () => void;
  readonly onStart: (scenarioId: string, mode: Mode) => void;
  /** Goes on from a moment of this session. */
  readonly onBranch: (log: SessionLog) => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

function Told(props: { readonly page: DebriefPageProps; readonly data: DebriefData }) {
  const { session } = props.page;
  const { facts, nameOf } = session.model;
  const latest = untrack(() => props.data);
  const { log, whatIf, reading, thought, setThought, file } = untrack(() =>
    props.page.sitting(() =>
      debriefSitting(() => session.debrief() ?? latest, facts.id, nameOf, session.lent),
    ),
  );
  if (hashOfOwn(facts.id) === null) createEffect(() => keepResult(facts.id, props.data));
  const sessionAt = createMemo((): SessionModel | null => {
    const row = whatIf.row();
    return row ? { ...session.model, signal: (id) => row.get(id) ?? Number.NaN } : null;
  });
  const leave = (go: () => void) => (): void => void forgetLog(log).then(go);
  const ways = {
    onStart: (id: string, mode: Mode) => leave(() => props.page.onStart(id, mode))(),
    onDrill: leave(() => location.assign('?drill=1')),
  };
  const goOn = (step: number, deed: number | null): void => props.page.onBranch(branchAt(log, step, deed));
  const model: DebriefModel = {
    title: facts.title,
    modeName: modeName(props.data.mode),
    get data() {
      return props.data;
    },
    get units() {
      return settings().units;
    },
    saturation: session.opened.saturation,
    nameOf,
    askMoment: whatIf.askRow,
    sessionAt,
    onGoOn: session.model.mode === 'assessed' ? null : goOn,
    thought,
    onThought: setThought,
    whatIf,
    reading,
    get next() {
      return nextJobs(facts.id, props.data, ways);
    },
  };
  const save = (): void =>
    saveFile(`${log.scenarioId}-${props.data.seed}.session.json`, sessionFileText(file()));
  return (
    <Debrief
      debrief={model}
      onSave={save}
      onAgain={leave(props.page.onAgain)}
      onHome={leave(props.page.onHome)}
      onMenu={props.page.onMenu}
      onHelp={props.page.onHelp}
    />
  );
}

export default function DebriefPage(props: DebriefPageProps) {
  onMount(() => {
    if (props.session.debrief() === null) props.session.askDebrief();
  });
  return (
    <Show
      when={props.session.debrief()}
      fallback={<Loading title={word('app.loading.debrief')} share={props.ranAgain} />}
    >
      {(data) => <Told page={props} data={data()} />}
    </Show>
  );
}
