/** Which screen is shown: shelf, session, menu, help. A session stays alive under menu and help. */
import { createResource, createSignal, lazy, Match, onMount, Show, Suspense, Switch } from 'solid-js';
import { render } from 'solid-js/web';
import { Textures } from '../instruments/Textures';
import { Help } from '../panels/Help';
import { Loading } from '../panels/Loading';
import { Menu } from '../panels/Menu';
import { Shelf } from '../panels/Shelf';
import { STEPS_PER_SECOND } from '../session/clock';
import type { Mode, SessionLog } from '../session/corePort';
import { word } from '../words/words';
import { type Asked, freshSeed, readAddress, writeAddress } from './address';
import { bestOf } from './bestResults';
import { keepLog, keptLog } from './savedSession';
import { shelfFacts } from './scenarioFacts';
import { changeSettings, settings } from './settings';

const SessionPage = lazy(() => import('./SessionPage'));

type Over = 'menu' | 'help' | null;

interface Opening {
  readonly asked: Asked;
  readonly log: SessionLog | null;
}

const sameSession = (asked: Asked, log: SessionLog): boolean =>
  log.scenarioId === asked.scenarioId && log.mode === asked.mode && log.seed === asked.seed;

function openingOf(asked: Asked | null, log: SessionLog | null): Opening | null {
  if (!asked) return null;
  return { asked, log: log && sameSession(asked, log) ? log : null };
}

const askedOf = (log: SessionLog): Asked => ({
  scenarioId: log.scenarioId,
  mode: log.mode,
  seed: log.seed,
  lapse: 1,
});

function App() {
  const [over, setOver] = createSignal<Over>(null);
  const [opening, setOpening] = createSignal<Opening | null>(null);
  const [storageRefused, setStorageRefused] = createSignal(false);
  const [kept, { refetch }] = createResource(keptLog);
  const goTo = (next: Opening | null): void => {
    history.pushState(null, '', next ? writeAddress(next.asked) : location.pathname);
    setOver(null);
    setOpening(next);
    document.title = word('app.title');
    if (!next) void refetch();
  };
  const start = (scenarioId: string, mode: Mode): void =>
    goTo({ asked: { scenarioId, mode, seed: freshSeed(), lapse: 1 }, log: null });
  const goOn = (): void => {
    const log = kept();
    if (log) goTo({ asked: askedOf(log), log });
  };
  const readNow = async (): Promise<void> => {
    setOpening(openingOf(readAddress(location.search), await keptLog()));
  };
  onMount(() => {
    void readNow();
    addEventListener('popstate', () => void readNow());
  });
  const saved = () => {
    const log = kept();
    return log ? { scenarioId: log.scenarioId, seconds: log.lastStep / STEPS_PER_SECOND } : null;
  };
  const keep = async (log: SessionLog): Promise<void> => {
    if (!(await keepLog(log))) setStorageRefused(true);
  };
  return (
    <>
      <a class="btn skip" href="#main">
        {word('app.skip')}
      </a>
      <Textures />
      <Show when={over() === 'menu'}>
        <Menu
          settings={settings()}
          inSession={opening() !== null}
          onChange={changeSettings}
          onBack={() => setOver(null)}
          onHome={() => goTo(null)}
          onHelp={() => setOver('help')}
        />
      </Show>
      <Show when={over() === 'help'}>
        <Help
          inSession={opening() !== null}
          onBack={() => setOver(null)}
          onHome={() => goTo(null)}
          onMenu={() => setOver('menu')}
        />
      </Show>
      <Switch>
        <Match when={opening()} keyed>
          {(one) => (
            <Suspense fallback={<Loading title={word('app.loading.bay')} note={word('app.loading.sub')} />}>
              <SessionPage
                asked={one.asked}
                log={one.log}
                hidden={over() !== null}
                onKeep={keep}
                onHome={() => goTo(null)}
                onAgain={() => start(one.asked.scenarioId, one.asked.mode)}
                onMenu={() => setOver('menu')}
                onHelp={() => setOver('help')}
              />
            </Suspense>
          )}
        </Match>
        <Match when={over() === null}>
          <Shelf
            scenarios={shelfFacts}
            units={settings().units}
            best={bestOf}
            saved={saved()}
            storageRefused={storageRefused()}
            onOpen={start}
            onGoOn={goOn}
            onHome={() => goTo(null)}
            onHelp={() => setOver('help')}
            onMenu={() => setOver('menu')}
          />
        </Match>
      </Switch>
    </>
  );
}

export function startApp(root: HTMLElement): void {
  document.title = word('app.title');
  render(() => <App />, root);
}
