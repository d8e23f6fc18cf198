/** The screens of a running session: drawn bay, in words, see-inside. The clock goes on under all of them. */
import {
  type Accessor,
  createEffect,
  createMemo,
  createSignal,
  getOwner,
  type JSX,
  Match,
  on,
  onCleanup,
  runWithOwner,
  type Setter,
  Switch,
  untrack,
} from 'solid-js';
import { Loading } from '../panels/Loading';
import { WorkScreen } from '../panels/WorkScreen';
import { makeWorkUi, type WorkUi } from '../panels/workUi';
import { word } from '../words/words';
import { attachBay, type BayHandle } from './bayBinding';
import { LoadLater } from './LoadLater';
import type { SessionPageProps } from './SessionPage';
import type { RunningSession } from './session';
import { fetchRestWhenIdle, InsidePage, WordsPage } from './sessionParts';
import { settings } from './settings';

type Screen = 'bay' | 'inside' | 'words';

/** Where the work stands on the screen: it outlives the screens while menu or help lie over them. */
export interface WorkPlace {
  readonly ui: WorkUi;
  readonly screen: Accessor<Screen>;
  readonly setScreen: Setter<Screen>;
}

/** Whoever chooses the other form of the bay in the menu comes back to it. */
function workPlace(session: RunningSession): WorkPlace {
  const wished = createMemo((): Screen => (settings().bay === 'words' ? 'words' : 'bay'));
  const [screen, setScreen] = createSignal<Screen>(wished());
  createEffect(on(wished, setScreen, { defer: true }));
  return { ui: makeWorkUi(session.model), screen, setScreen };
}

/** The clock starts at the address's speed when the job begins. */
function startClockOnBegin(session: RunningSession, lapse: SessionPageProps['asked']['lapse']): void {
  let was = session.model.view().phase;
  createEffect(() => {
    const phase = session.model.view().phase;
    if (was === 'briefing' && phase === 'work') session.model.setLapse(lapse);
    was = phase;
  });
}

/** Sounds are fetched only once they are wanted, and end with the screens. */
function soundWhenWanted(session: RunningSession): void {
  const owner = getOwner();
  let isAsked = false;
  let isOver = false;
  onCleanup(() => {
    isOver = true;
  });
  createEffect(() => {
    if (isAsked || settings().sound === 'off') return;
    isAsked = true;
    void import('../panels/sound/followSound').then(({ followSound }) => {
      if (!isOver) runWithOwner(owner, () => followSound(session.model, () => settings().sound));
    });
  });
}

export function SessionScreens(props: {
  readonly session: RunningSession;
  readonly page: SessionPageProps;
  /** The place held for these screens, made where there is none yet. */
  readonly place: (make: () => WorkPlace) => WorkPlace;
}) {
  const { ui, screen, setScreen } = untrack(() => props.place(() => workPlace(props.session)));
  let bay: BayHandle | null = null;
  const detach = (): void => {
    bay?.dispose();
    bay = null;
  };
  startClockOnBegin(props.session, props.page.asked.lapse);
  soundWhenWanted(props.session);
  fetchRestWhenIdle(props.session);
  document.title = word('app.titleOf', { name: props.session.model.facts.title });
  createEffect(() => {
    if (screen() !== 'bay') detach();
  });
  onCleanup(detach);
  const later = (part: () => JSX.Element): JSX.Element => (
    <LoadLater
      waiting={<Loading title={word('app.loading.bay')} />}
      onBack={() => setScreen('bay')}
      onHome={props.page.onHome}
    >
      {part()}
    </LoadLater>
  );
  return (
    <Switch>
      <Match when={screen() === 'bay'}>
        <WorkScreen
          ui={ui}
          onHost={(host) => {
            detach();
            bay = attachBay(host, props.session, ui);
          }}
          onZoom={(step) => bay?.zoom(step)}
          onConnect={(hose, port) =>
            ui.show({ kind: 'tool', tool: hose === 'charging' ? 'charging' : `gauge-set` }) ?? port
          }
          onHome={props.page.onHome}
          onHelp={props.page.onHelp}
          onMenu={props.page.onMenu}
          onInside={() => setScreen('inside')}
          onWords={() => setScreen('words')}
        />
      </Match>
      <Match when={screen() === 'inside'}>
        {later(() => (
          <InsidePage
            session={props.session}
            onBay={() => setScreen('bay')}
            onHome={props.page.onHome}
            onMenu={props.page.onMenu}
            onHelp={props.page.onHelp}
          />
        ))}
      </Match>
      <Match when={screen() === 'words'}>
        {later(() => (
          <WordsPage session={props.session} ui={ui} onBay={() => setScreen('bay')} page={props.page} />
        ))}
      </Match>
    </Switch>
  );
}
