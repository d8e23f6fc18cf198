/** Which screen is shown: shelf, session, menu, help. A session stays alive under menu and help. */
import {
  createEffect,
  createMemo,
  createResource,
  createSignal,
  lazy,
  Match,
  on,
  onMount,
  Show,
  Switch,
} from 'solid-js';
import { render } from 'solid-js/web';
import { Textures } from '../instruments/Textures';
import { Help } from '../panels/Help';
import { Loading } from '../panels/Loading';
import { Menu } from '../panels/Menu';
import { onRegionKey } from '../panels/regions';
import { Shelf } from '../panels/Shelf';
import { STEPS_PER_SECOND } from '../session/clock';
import type { Mode, SessionLog } from '../session/corePort';
import { word } from '../words/words';
import {
  type Asked,
  asksForCard,
  asksForWorkshop,
  CARD_ADDRESS,
  drillAsked,
  freshSeed,
  readAddress,
  writeAddress,
} from './address';
import { bestOf } from './bestResults';
import { isFinished } from './finished';
import { LoadLater } from './LoadLater';
import { language } from './language';
import type { Other } from './logStanding';
import { forgetLog, type KeptSession, keepLog, keptSession } from './savedSession';
import { shelfFacts } from './scenarioFacts';
import { changeSettings, settings } from './settings';
import { tellPlaces } from './told';
import { withWords } from './withWords';

const SessionPage = lazy(() => withWords(['job'], import('./SessionPage')));
const OtherSession = lazy(() => withWords(['job'], import('./OtherSession')));
const CardPage = lazy(() =>
  withWords(
    ['job', 'pages'],
    tellPlaces().then(() => import('./CardPage')),
  ),
);
const WorkshopPage = lazy(() => withWords(['job', 'workshop'], import('./WorkshopPage')));
const DrillPage = lazy(() => withWords(['job', 'pages'], import('./DrillPage')));

type Over = 'menu' | 'help' | null;

interface Opening {
  readonly asked: Asked;
  readonly log: SessionLog | null;
  /** Gone on from a moment that was just looked at. */
  readonly straightOn?: true;
  /** Set where the kept session is of another engine or scenario: then it is only shown. */
  readonly shown: { readonly kept: KeptSession; readonly other: NonNullable<Other> } | null;
}

const sameSession = (asked: Asked, log: SessionLog): boolean =>
  log.scenarioId === asked.scenarioId && log.mode === asked.mode && log.seed === asked.seed;

/** Only a session of this engine and this scenario is run again; hashes are looked at before, not after. */
async function openingOf(asked: Asked | null, kept: KeptSession | null): Promise<Opening | null> {
  if (!asked) return null;
  if (!kept || !sameSession(asked, kept.log)) return { asked, log: null, shown: null };
  const { standingOf } = await import('./logStanding');
  const other = await standingOf(kept.log);
  return other === null
    ? { asked, log: kept.log, shown: null }
    : { asked, log: null, shown: { kept, other } };
}

const askedOf = (log: SessionLog): Asked => ({
  scenarioId: log.scenarioId,
  mode: log.mode,
  seed: log.seed,
  lapse: 1,
});

/** The menu stands there anew in the other language: title and focus are where they were. */
function sayTitleAgain(): void {
  document.title = word('app.title');
  document.querySelector<HTMLElement>('#language [aria-checked="true"]')?.focus();
}

function App() {
  const [over, setOver] = createSignal<Over>(null);
  const [opening, setOpening] = createSignal<Opening | null>(null);
  const [atCard, setAtCard] = createSignal(asksForCard(location.search));
  const [atWorkshop, setAtWorkshop] = createSignal(asksForWorkshop(location.search));
  const [drill, setDrill] = createSignal(drillAsked(location.search));
  const [storageRefused, setStorageRefused] = createSignal(false);
  const [kept, { refetch }] = createResource(keptSession);
  /** What of the address is shown: a link within the page goes nowhere else. */
  let shownSearch = location.search;
  const showAddress = (address: string): void => {
    history.pushState(null, '', address);
    shownSearch = location.search;
  };
  const goTo = (next: Opening | null): void => {
    showAddress(next ? writeAddress(next.asked) : location.pathname);
    setOver(null);
    setAtCard(false);
    setAtWorkshop(false);
    setDrill(null);
    setOpening(next);
    document.title = word('app.title');
    if (!next) void refetch();
  };
  const start = (scenarioId: string, mode: Mode): void =>
    goTo({ asked: { scenarioId, mode, seed: freshSeed(), lapse: 1 }, log: null, shown: null });
  /** The session that was looked at has to let go of its car first; what it leaves behind is the one to go on with. */
  const goOnFrom = async (log: SessionLog): Promise<void> => {
    setOpening(null);
    await keep(log);
    goTo({ asked: { ...askedOf(log), lapse: 0 }, log, shown: null, straightOn: true });
  };
  const goOn = async (): Promise<void> => {
    const found = kept();
    if (found) goTo(await openingOf(askedOf(found.log), found));
  };
  const goToCard = (): void => {
    showAddress(CARD_ADDRESS);
    setOver(null);
    setOpening(null);
    setDrill(null);
    setAtWorkshop(false);
    setAtCard(true);
  };
  const readNow = async (): Promise<void> => {
    setAtCard(asksForCard(location.search));
    setAtWorkshop(asksForWorkshop(location.search));
    setDrill(drillAsked(location.search));
    setOpening(await openingOf(readAddress(location.search), await keptSession()));
  };
  /** Back and forth in the browser's history: whatever lies over the page goes, and the shelf looks for what is kept. */
  const goWithHistory = (): void => {
    if (location.search === shownSearch) return;
    shownSearch = location.search;
    setOver(null);
    document.title = word('app.title');
    void readNow();
    void refetch();
  };
  onMount(() => {
    void readNow();
    addEventListener('popstate', goWithHistory);
  });
  const onShelf = createMemo(on(language, shelfFacts));
  createEffect(on(language, sayTitleAgain, { defer: true }));
  const saved = () => {
    const log = kept()?.log;
    return log && !isFinished(log)
      ? { scenarioId: log.scenarioId, seconds: log.lastStep / STEPS_PER_SECOND }
      : null;
  };
  const keep = async (log: SessionLog): Promise<void> => {
    if (!(await keepLog(log))) setStorageRefused(true);
  };
  return (
    <>
      <Show when={language()} keyed>
        <a class="btn skip" href="#main">
          {word('app.skip')}
        </a>
      </Show>
      <Textures />
      <Show when={over() === 'menu' && language()} keyed>
        <Menu
          settings={settings()}
          inSession={opening() !== null}
          onChange={changeSettings}
          onBack={() => setOver(null)}
          onHome={() => goTo(null)}
          onHelp={() => setOver('help')}
          onCard={goToCard}
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
        <Match when={opening()?.shown} keyed>
          {(one) => (
            <OtherSession
              kept={one.kept}
              other={one.other}
              onHome={() => goTo(null)}
              onThrowAway={() => void forgetLog(one.kept.log).then(() => goTo(null))}
            />
          )}
        </Match>
        <Match when={opening()} keyed>
          {(one) => (
            <LoadLater
              waiting={<Loading title={word('app.loading.bay')} note={word('app.loading.sub')} />}
              onHome={() => goTo(null)}
            >
              <SessionPage
                asked={one.asked}
                log={one.log}
                hidden={over() !== null}
                onKeep={keep}
                onHome={() => goTo(null)}
                onReopen={() => void readNow()}
                onAgain={() => start(one.asked.scenarioId, one.asked.mode)}
                onStart={start}
                onBranch={(log) => void goOnFrom(log)}
                straightOn={one.straightOn ?? false}
                onMenu={() => setOver('menu')}
                onHelp={() => setOver('help')}
              />
            </LoadLater>
          )}
        </Match>
        <Match when={atWorkshop()}>
          <LoadLater waiting={<Loading title={word('app.loading.workshop')} />} onHome={() => goTo(null)}>
            <WorkshopPage
              hidden={over() !== null}
              onHome={() => goTo(null)}
              onMenu={() => setOver('menu')}
              onHelp={() => setOver('help')}
            />
          </LoadLater>
        </Match>
        <Match when={over() === null && atCard()}>
          <LoadLater waiting={<Loading title={word('app.loading.card')} />} onHome={() => goTo(null)}>
            <CardPage
              onHome={() => goTo(null)}
              onMenu={() => setOver('menu')}
              onHelp={() => setOver('help')}
            />
          </LoadLater>
        </Match>
        <Match when={over() === null && drill()}>
          {(asked) => (
            <LoadLater waiting={<Loading title={word('app.loading.drill')} />} onHome={() => goTo(null)}>
              <DrillPage
                asked={asked()}
                onHome={() => goTo(null)}
                onMenu={() => setOver('menu')}
                onHelp={() => setOver('help')}
              />
            </LoadLater>
          )}
        </Match>
        <Match when={over() === null}>
          <Shelf
            scenarios={onShelf()}
            units={settings().units}
            best={bestOf}
            saved={saved()}
            storageRefused={storageRefused()}
            onOpen={start}
            onGoOn={() => void goOn()}
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
  document.addEventListener('keydown', onRegionKey);
  render(() => <App />, root);
}
