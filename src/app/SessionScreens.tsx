/** The screens of a running session: drawn bay, in words, see-inside. The clock goes on under all of them. */
import { createEffect, createSignal, getOwner, lazy, Match, onCleanup, runWithOwner, Switch } from 'solid-js';
import { Loading } from '../panels/Loading';
import { WorkScreen } from '../panels/WorkScreen';
import { makeWorkUi } from '../panels/workUi';
import { word } from '../words/words';
import { attachBay, type BayHandle } from './bayBinding';
import { LoadLater } from './LoadLater';
import type { SessionPageProps } from './SessionPage';
import type { RunningSession } from './session';
import { settings } from './settings';

const InsidePage = lazy(() => import('./InsidePage'));
const WordsPage = lazy(() => import('./WordsPage'));

type Screen = 'bay' | 'inside' | 'words';

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
  createEffect(() => {
    if (isAsked || settings().sound === 'off') return;
    isAsked = true;
    void import('../panels/sound/followSound').then(({ followSound }) =>
      runWithOwner(owner, () => followSound(session.model, () => settings().sound)),
    );
  });
}

export function SessionScreens(props: { readonly session: RunningSession; readonly page: SessionPageProps }) {
  const [screen, setScreen] = createSignal<Screen>(settings().bay === 'words' ? 'words' : 'bay');
  const ui = makeWorkUi(props.session.model);
  let bay: BayHandle | null = null;
  const detach = (): void => {
    bay?.dispose();
    bay = null;
  };
  startClockOnBegin(props.session, props.page.asked.lapse);
  soundWhenWanted(props.session);
  document.title = word('app.titleOf', { name: props.session.model.facts.title });
  createEffect(() => {
    if (screen() !== 'bay') detach();
  });
  onCleanup(detach);
  return (
    <LoadLater waiting={<Loading title={word('app.loading.bay')} />} onHome={props.page.onHome}>
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
          <InsidePage
            session={props.session}
            onBay={() => setScreen('bay')}
            onHome={props.page.onHome}
            onMenu={props.page.onMenu}
            onHelp={props.page.onHelp}
          />
        </Match>
        <Match when={screen() === 'words'}>
          <WordsPage session={props.session} ui={ui} onBay={() => setScreen('bay')} page={props.page} />
        </Match>
      </Switch>
    </LoadLater>
  );
}
