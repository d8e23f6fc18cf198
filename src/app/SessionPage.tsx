/** One session from opening to debrief: opens the core, offers to go on from a log, shows work, inside, words, debrief. */
import '../app/styles/session.css';
import { createResource, createSignal, Match, onCleanup, Show, Switch } from 'solid-js';
import { Failed } from '../panels/Failed';
import { Loading } from '../panels/Loading';
import { STEPS_PER_SECOND } from '../session/clock';
import type { Mode, SessionLog } from '../session/corePort';
import { word } from '../words/words';
import type { Asked } from './address';
import type { DebriefSitting } from './debriefSitting';
import { findJob } from './findJob';
import { isFinished } from './finished';
import { keptOnce } from './keptOnce';
import { LoadLater } from './LoadLater';
import { plainReason } from './notFetched';
import { hashOfOwn } from './ownId';
import { SessionScreens, type WorkPlace } from './SessionScreens';
import { forgetLog } from './savedSession';
import { saveFile } from './saveFile';
import { factsOf, scenarioData } from './scenarioFacts';
import { openRunningSession, type RunningSession } from './session';
import { DebriefPage, ResumeCard } from './sessionParts';
import { holdSession } from './tabLock';

export interface SessionPageProps {
  readonly asked: Asked;
  readonly log: SessionLog | null;
  /** Menu or help lies over it. */
  readonly hidden: boolean;
  readonly onKeep: (log: SessionLog) => void;
  readonly onHome: () => void;
  /** Opens the kept session anew: another tab has let go of it. */
  readonly onReopen: () => void;
  readonly onAgain: () => void;
  readonly onStart: (scenarioId: string, mode: Mode) => void;
  /** Goes on from a moment of this session: `log` is of the same car up to there. */
  readonly onBranch: (log: SessionLog) => void;
  /** The log was chosen by whoever goes on from it; there is nothing to ask. */
  readonly straightOn: boolean;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

function Resume(props: {
  readonly page: SessionPageProps;
  readonly log: SessionLog;
  readonly title: string | undefined;
  readonly session: RunningSession | undefined;
  /** Another tab works on it. */
  readonly elsewhere: boolean;
  /** How much of the log has been run again. */
  readonly ranAgain: number;
  readonly onGoOn: () => void;
}) {
  const last = props.log.commands[props.log.commands.length - 1]?.step ?? 0;
  const save = async (): Promise<void> => {
    const file = await props.session?.sessionFile();
    if (file) saveFile(`${props.log.scenarioId}-${props.log.seed}.session.json`, file);
  };
  const checked = () =>
    props.session
      ? { seconds: props.session.opened.replaySeconds, hash: props.session.opened.stateHash }
      : null;
  return (
    <ResumeCard
      title={props.title ?? props.log.scenarioId}
      mode={props.log.mode}
      seed={props.log.seed}
      seconds={props.log.lastStep / STEPS_PER_SECOND}
      actions={props.log.commands.length}
      lastActionSeconds={last / STEPS_PER_SECOND}
      checked={checked()}
      ranAgain={props.ranAgain}
      onGoOn={props.onGoOn}
      elsewhere={props.elsewhere}
      onSave={() => void save()}
      onLater={props.page.onHome}
      onThrowAway={() => void forgetLog(props.log).then(props.page.onHome)}
      onHelp={props.page.onHelp}
      onMenu={props.page.onMenu}
    />
  );
}

export default function SessionPage(props: SessionPageProps) {
  const [readOnly, setReadOnly] = createSignal(false);
  const [ranAgain, setRanAgain] = createSignal(0);
  const [goneOn, setGoneOn] = createSignal(props.log === null || props.straightOn || isFinished(props.log));
  const [job, setJob] = createSignal(scenarioData.find((one) => one.id === props.asked.scenarioId));
  const title = (): string | undefined => {
    const found = job();
    return found && factsOf(found).title;
  };
  const leaving = new AbortController();
  const open = async (): Promise<RunningSession> => {
    setReadOnly(!(await holdSession(props.asked, leaving.signal, props.onReopen)));
    const { scenarioId, mode, seed } = props.asked;
    setJob(await findJob(scenarioId));
    const onLog = (log: SessionLog): void => {
      if (!readOnly() && !leaving.signal.aborted && log.commands.length > 0) props.onKeep(log);
    };
    const hooks = { readOnly, onLog, onRanAgain: setRanAgain, leaving: leaving.signal };
    return openRunningSession({ scenarioId, mode, seed, log: props.log }, hooks);
  };
  const [resource] = createResource(open);
  /** A resource that is read before it is there would hide what shows how far it has come. */
  const session = (): RunningSession | undefined => (resource.state === 'ready' ? resource() : undefined);
  onCleanup(() => leaving.abort());
  const sitting = keptOnce<DebriefSitting>();
  const place = keptOnce<WorkPlace>();
  const failed = (): string | null => {
    if (!resource.error) return session()?.failure() ?? null;
    return plainReason(String(resource.error.message ?? resource.error));
  };
  const waiting = () =>
    props.log === null ? (
      <Loading title={word('app.loading.bay')} note={word('app.loading.sub')} />
    ) : (
      <Loading title={word('app.loading.again')} share={ranAgain()} />
    );
  return (
    <Show when={!props.hidden}>
      <Switch fallback={waiting()}>
        <Match when={resource.error || session()?.failure()}>
          <Failed
            reason={failed() ?? ''}
            unknown={job() === undefined}
            own={hashOfOwn(props.asked.scenarioId) !== null}
            id={props.asked.scenarioId}
            onHome={props.onHome}
          />
        </Match>
        <Match when={!goneOn() && props.log}>
          {(log) => (
            <LoadLater waiting={waiting()} onHome={props.onHome}>
              <Resume
                page={props}
                log={log()}
                title={title()}
                session={session()}
                elsewhere={readOnly()}
                ranAgain={ranAgain()}
                onGoOn={() => setGoneOn(true)}
              />
            </LoadLater>
          )}
        </Match>
        <Match when={session()?.model.view().phase === 'debrief' && session()}>
          {(one) => (
            <LoadLater waiting={<Loading title={word('app.loading.debrief')} />} onHome={props.onHome}>
              <DebriefPage
                session={one()}
                sitting={sitting}
                ranAgain={ranAgain()}
                onHome={props.onHome}
                onAgain={props.onAgain}
                onStart={props.onStart}
                onBranch={props.onBranch}
                onMenu={props.onMenu}
                onHelp={props.onHelp}
              />
            </LoadLater>
          )}
        </Match>
        <Match when={session()}>
          {(one) => <SessionScreens session={one()} page={props} place={place} />}
        </Match>
      </Switch>
    </Show>
  );
}
