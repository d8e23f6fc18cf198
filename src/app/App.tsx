/** Which screen is shown: shelf, session, menu, help. A session stays alive under menu and help. */
import {
  createEffect,
  createMemo,
  createResource,
  createSignal,
  Match,
  on,
  onMount,
  Show,
  Switch,
} from 'solid-js';
import { render } from 'solid-js/web';
import { Textures } from '../instruments/Textures';
import { comingLater } from '../panels/comingLater';
import { Help } from '../panels/Help';
import { Loading } from '../panels/Loading';
import { Menu } from '../panels/Menu';
import { reachable } from '../panels/reachable';
import { onRegionKey } from '../panels/regions';
import { Shelf } from '../panels/Shelf';
import { setWayBack } from '../panels/wayBack';
import { STEPS_PER_SECOND } from '../session/clock';
import type { Mode, SessionLog } from '../session/corePort';
import { word } from '../words/words';
import {
  asksForCard,
  asksForWorkshop,
  CARD_ADDRESS,
  drillAsked,
  freshSeed,
  readAddress,
  WORKSHOP_ADDRESS,
  writeAddress,
} from './address';
import { bestOf } from './bestResults';
import { isFinished } from './finished';
import { LoadLater } from './LoadLater';
import { language } from './language';
import { leavingShelf } from './leavingShelf';
import { askedOf, isOwn, keptHere, type Opening, openingOf } from './opening';
import { overPage } from './overPage';
import { forgetLog, keepLog } from './savedSession';
import { shelfFacts } from './scenarioFacts';
import { changeSettings, settings } from './settings';
import { storageRefused } from './storage';
import { isTold, tellJob, tellPlaces } from './told';
import { withWords } from './withWords';

const SessionPage = comingLater(() => withWords(['job'], import('./SessionPage')));
const OtherSession = comingLater(() => withWords(['job'], import('./OtherSession')));
const CardPage = comingLater(async () => {
  await tellPlaces();
  return withWords(['job', 'pages'], import('./CardPage'));
});
const WorkshopPage = comingLater(() => withWords(['job', 'findings', 'workshop'], import('./WorkshopPage')));
const DrillPage = comingLater(() => withWords(['job', 'pages'], import('./DrillPage')));

/** What a job cannot be opened without, as far as the page knows it. */
async function fetchJob(id: string): Promise<void> {
  if (!isTold(id)) await reachable();
  await Promise.all([SessionPage.ahead(), tellJob(id)]);
}

/** The menu stands there anew in the other language: title and focus are where they were. */
function sayTitleAgain(): void {
  document.title = word('app.title');
  document.querySelector<HTMLElement>('#language [aria-checked="true"]')?.focus();
}

function App() {
  const { over, lay, takeAway, ...laid } = overPage();
  const [opening, setOpening] = createSignal<Opening | null>(null);
  const [atCard, setAtCard] = createSignal(asksForCard(location.search));
  const [atWorkshop, setAtWorkshop] = createSignal(asksForWorkshop(location.search));
  const [drill, setDrill] = createSignal(drillAsked(location.search));
  const [kept, { refetch }] = createResource(keptHere);
  /** What of the address is shown: a link within the page goes nowhere else. */
  let shownSearch = location.search;
  const leaveFor = (address: string, next: Opening | null = null): void => {
    laid.leaveFor(address);
    shownSearch = location.search;
    setAtCard(false);
    setAtWorkshop(false);
    setDrill(null);
    setOpening(next);
    document.title = word('app.title');
  };
  const goTo = (next: Opening | null): void => {
    leaveFor(next ? writeAddress(next.asked) : location.pathname, next);
    if (!next) void refetch();
  };
  const start = (scenarioId: string, mode: Mode): void =>
    goTo({ asked: { scenarioId, mode, seed: freshSeed(), lapse: 1 }, log: null, shown: null });
  const shelf = leavingShelf();
  /** The session that was looked at has to let go of its car first; what it leaves behind is the one to go on with. */
  const goOnFrom = async (log: SessionLog, scenarioId: string): Promise<void> => {
    setOpening(null);
    await keepLog(log);
    goTo({ asked: { ...askedOf(log, scenarioId), lapse: 0 }, log, shown: null, straightOn: true });
  };
  const goOn = async (): Promise<void> => {
    const found = kept();
    if (!found) return;
    const asked = askedOf(found.log, found.scenarioId);
    await shelf.leave(fetchJob(asked.scenarioId), async () => goTo(await openingOf(asked, found)));
  };
  const goToCard = (): void => {
    leaveFor(CARD_ADDRESS);
    setAtCard(true);
  };
  const goToWorkshop = (): void => {
    leaveFor(WORKSHOP_ADDRESS);
    setAtWorkshop(true);
  };
  const readNow = async (): Promise<void> => {
    setAtCard(asksForCard(location.search));
    setAtWorkshop(asksForWorkshop(location.search));
    setDrill(drillAsked(location.search));
    setOpening(await openingOf(readAddress(location.search), await keptHere()));
  };
  /** Back and forth in the browser's history: whatever lies over the page goes, and the shelf looks for what is kept. */
  const goWithHistory = (): void => {
    laid.follow();
    if (location.search === shownSearch) return;
    shownSearch = location.search;
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
  createEffect(() => setWayBack(() => (isOwn(opening()) ? goToWorkshop : null)));
  const saved = () => {
    const found = kept();
    if (!found || isFinished(found.log)) return null;
    const { log, scenarioId, ownTitle } = found;
    return { scenarioId, seconds: log.lastStep / STEPS_PER_SECOND, ownTitle };
  };
  /** Somewhere else than at the shelf, so that menu and help have somewhere to go back to. */
  const isAway = (): boolean => opening() !== null || atWorkshop() || atCard() || drill() !== null;
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
          canGoBack={isAway()}
          onChange={changeSettings}
          onBack={takeAway}
          onHome={() => goTo(null)}
          onHelp={() => lay('help')}
          onCard={goToCard}
        />
      </Show>
      <Show when={over() === 'help'}>
        <Help canGoBack={isAway()} onBack={takeAway} onHome={() => goTo(null)} onMenu={() => lay('menu')} />
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
                onKeep={(log) => void keepLog(log)}
                onHome={() => goTo(null)}
                onReopen={() => void readNow()}
                onAgain={() => start(one.asked.scenarioId, one.asked.mode)}
                onStart={start}
                onBranch={(log) => void goOnFrom(log, one.asked.scenarioId)}
                straightOn={one.straightOn ?? false}
                onMenu={() => lay('menu')}
                onHelp={() => lay('help')}
              />
            </LoadLater>
          )}
        </Match>
        <Match when={atWorkshop()}>
          <LoadLater waiting={<Loading title={word('app.loading.workshop')} />} onHome={() => goTo(null)}>
            <WorkshopPage
              onPlay={start}
              hidden={over() !== null}
              onHome={() => goTo(null)}
              onMenu={() => lay('menu')}
              onHelp={() => lay('help')}
            />
          </LoadLater>
        </Match>
        <Match when={over() === null && atCard()}>
          <LoadLater waiting={<Loading title={word('app.loading.card')} />} onHome={() => goTo(null)}>
            <CardPage onHome={() => goTo(null)} onMenu={() => lay('menu')} onHelp={() => lay('help')} />
          </LoadLater>
        </Match>
        <Match when={over() === null && drill()}>
          {(asked) => (
            <LoadLater waiting={<Loading title={word('app.loading.drill')} />} onHome={() => goTo(null)}>
              <DrillPage
                asked={asked()}
                onHome={() => goTo(null)}
                onMenu={() => lay('menu')}
                onHelp={() => lay('help')}
              />
            </LoadLater>
          )}
        </Match>
        <Match when={shelf.isSlow()}>
          <Loading title={word('app.loading.bay')} note={word('app.loading.sub')} />
        </Match>
        <Match when={over() === null}>
          <Shelf
            scenarios={onShelf()}
            units={settings().units}
            best={bestOf}
            saved={saved()}
            storageRefused={storageRefused()}
            notStarted={shelf.isHeld()}
            onOpen={(id, mode) => void shelf.leave(fetchJob(id), () => start(id, mode))}
            onGoOn={() => void goOn()}
            onHome={() => goTo(null)}
            onHelp={() => lay('help')}
            onMenu={() => lay('menu')}
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
