/**
 * See-inside: loop, diagram and tables of the same moment. A place chosen in one is shown in the others, and a sentence
 * says what it is; without one a sentence worked out from the state says what the whole shows.
 */
import { createMemo, createSignal, type JSX, on, Show, untrack } from 'solid-js';
import { type DisplayUnits, inWords, writePressure } from '../instruments/displayUnits';
import { LoopDrawing } from '../instruments/LoopDrawing';
import type { SpotChoice } from '../instruments/loop/Spot';
import type { SpotId } from '../instruments/loop/spots';
import { PressureEnthalpy } from '../instruments/PressureEnthalpy';
import { isKnown } from '../instruments/phGeometry';
import type { SaturationLine } from '../instruments/saturation';
import { word } from '../words/words';
import { Segmented } from './controls';
import { Icon } from './Icon';
import { insideBeats } from './inside/insideBeats';
import { healthyLoopOf, healthyPointsOf, loopStateOf } from './inside/insideState';
import { CycleKey, PhaseKey } from './inside/Keys';
import { PlaceTable } from './inside/PlaceTable';
import { PointTable } from './inside/PointTable';
import { spotWords } from './inside/spotWords';
import { insideSentences } from './insideWords';
import type { SessionModel } from './sessionModel';
import { TopBar } from './TopBar';

type Shown = 'both' | 'loop' | 'diagram' | 'table';

export interface InsideProps {
  readonly session: SessionModel;
  readonly onBay: () => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
  readonly clock: JSX.Element;
}

function ViewChoice(props: {
  readonly shown: Shown;
  readonly isNarrow?: boolean;
  readonly onChoose: (shown: Shown) => void;
}): JSX.Element {
  const one = () => [
    { value: 'loop' as Shown, label: word('inside.loopOnly') },
    { value: 'diagram' as Shown, label: word('inside.diagramOnly') },
    { value: 'table' as Shown, label: word('inside.tableOnly') },
  ];
  return (
    <Segmented
      label={word('inside.view')}
      options={props.isNarrow ? one() : [{ value: 'both' as Shown, label: word('inside.both') }, ...one()]}
      value={props.isNarrow && props.shown === 'both' ? 'loop' : props.shown}
      onChoose={props.onChoose}
    />
  );
}

/** Where one picture stands at a time: to the same place in the other. */
function OtherPicture(props: {
  readonly shown: Shown;
  readonly onShow: (shown: Shown) => void;
}): JSX.Element {
  const other = (): Shown => (props.shown === 'diagram' ? 'loop' : 'diagram');
  return (
    <button type="button" class="btn sm only-s" onClick={() => props.onShow(other())}>
      {other() === 'loop' ? word('inside.showInLoop') : word('inside.showInDiagram')}
    </button>
  );
}

interface MomentProps {
  readonly session: SessionModel;
  readonly saturation: SaturationLine;
  readonly shown: Shown;
  readonly onShow: (shown: Shown) => void;
}

function Moment(props: MomentProps): JSX.Element {
  const [chosen, setChosen] = createSignal<SpotId | null>(null);
  const beats = insideBeats(props.session);
  /** Read anew at a beat, and not with every frame of the session. */
  const at = <T,>(beat: () => unknown, read: () => T): (() => T) => createMemo(on(beat, () => read()));
  const state = at(beats.drawn, () => loopStateOf(props.session));
  const healthyLoop = at(beats.drawn, () => healthyLoopOf(props.session));
  const sides = at(beats.drawn, () => ({
    low: props.session.signal('lowSide.gaugePressurePa'),
    high: props.session.signal('highSide.gaugePressurePa'),
  }));
  const healthy = at(beats.drawn, () => healthyPointsOf(props.session));
  const plotted = at(beats.plotted, () => ({ points: state().points, healthy: healthy() }));
  const told = at(beats.told, () => ({ state: state(), healthy: healthy(), healthyLoop: healthyLoop() }));
  const isTold = createMemo(() => healthy().every(isKnown));
  const units = (): DisplayUnits => props.session.units();
  const clock = () => props.session.clock();
  const choice: SpotChoice = {
    get chosen() {
      return chosen();
    },
    onChoose: setChosen,
  };
  /** Said when it is chosen; what changes afterwards is there to be read. */
  const spoken = createMemo(() => {
    const spot = chosen();
    return spot === null
      ? ''
      : untrack(() => spotWords(spot, told().state.points, props.saturation, units()));
  });
  const side = (face: 'low' | 'high'): string =>
    inWords(writePressure(sides()[face], units().pressure, face));
  const sentences = createMemo(() => {
    const { points } = told().state;
    units();
    return untrack(() => insideSentences(props.session, props.saturation, points).join(' '));
  });
  return (
    <>
      <section class="panel lp" aria-label={word('inside.loop')} data-region tabIndex={-1}>
        <div class="row wrap">
          <h2>{word('inside.loop')}</h2>
          <span class="sp" />
          <PhaseKey />
        </div>
        <LoopDrawing
          state={state()}
          healthy={healthyLoop()}
          units={units()}
          low={side('low')}
          high={side('high')}
          isRunning={clock().lapse > 0 || clock().runningOn !== null}
          choice={choice}
        />
      </section>
      <section class="panel dg" aria-label={word('inside.diagram')} data-region tabIndex={-1}>
        <div class="row wrap">
          <h2>{word('inside.diagram')}</h2>
          <span class="mut s">{props.saturation.fluid}</span>
          <span class="sp" />
          <Show when={isTold()}>
            <CycleKey />
          </Show>
        </div>
        <PressureEnthalpy
          saturation={props.saturation}
          points={plotted().points}
          units={units()}
          healthy={plotted().healthy}
          choice={choice}
        />
      </section>
      <section class="panel tb" aria-label={word('inside.tableOnly')} data-region tabIndex={0}>
        <div class="tbs">
          <PointTable
            points={told().state.points}
            units={units()}
            saturation={props.saturation}
            {...(isTold() ? { healthy: told().healthy } : {})}
            choice={choice}
          />
          <Show when={props.shown === 'table'}>
            <PlaceTable state={told().state} healthy={told().healthyLoop} units={units()} />
          </Show>
        </div>
        <div class="say2">
          <p role="status" class="vh">
            {spoken()}
          </p>
          <Show when={chosen()}>
            {(spot) => <p>{spotWords(spot(), told().state.points, props.saturation, units())}</p>}
          </Show>
          <Show
            when={chosen()}
            fallback={
              <p>
                <b>{word('inside.says.title')}</b> {sentences()}
                <span class="mut"> {word('inside.press')}</span>
              </p>
            }
          >
            <OtherPicture shown={props.shown} onShow={props.onShow} />
          </Show>
        </div>
      </section>
    </>
  );
}

export function Inside(props: InsideProps): JSX.Element {
  const [shown, setShown] = createSignal<Shown>('both');
  return (
    <div class="insidep">
      <TopBar
        title={word('inside.title', { name: props.session.facts.title })}
        onHome={props.onHome}
        onMenu={props.onMenu}
        onHelp={props.onHelp}
      >
        <span class="sp" />
        {props.clock}
        <span class="hide-s">
          <ViewChoice shown={shown()} onChoose={setShown} />
        </span>
        <button type="button" class="btn sm" aria-label={word('inside.bay')} onClick={() => props.onBay()}>
          <Icon name="back" size={18} />
          <span class="hide-s">{word('inside.bay')}</span>
        </button>
      </TopBar>
      <Show when={props.session.saturation()}>
        {(saturation) => (
          <main class={`inside show-${shown()}`} id="main">
            <h1 class="vh">{word('inside.title', { name: props.session.facts.title })}</h1>
            <div class="only-s">
              <ViewChoice shown={shown()} isNarrow onChoose={setShown} />
            </div>
            <Moment session={props.session} saturation={saturation()} shown={shown()} onShow={setShown} />
          </main>
        )}
      </Show>
    </div>
  );
}
