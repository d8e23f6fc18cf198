/** The debrief: score with its five domains, findings with their evidence, what happened over time, the loop at a moment. */
import { createSignal, For, type JSX, Match, Show, Switch } from 'solid-js';
import { writeClock } from '../instruments/displayUnits';
import { type Pin, TimePlot } from '../instruments/TimePlot';
import { word } from '../words/words';
import { Segmented } from './controls';
import { Actions, ActionTable, MomentDiagram } from './DebriefMoment';
import { DomainBars, Finds } from './DebriefScore';
import { DebriefSuspects } from './DebriefSuspects';
import { lanesOf } from './debriefLanes';
import type { DebriefData, DebriefModel } from './debriefModel';
import { Icon } from './Icon';
import { TopBar } from './TopBar';

const STEPS_PER_SECOND = 50;

type Shown = 'plot' | 'table' | 'diagram' | 'suspects';

export interface DebriefProps {
  readonly debrief: DebriefModel;
  readonly onSave: () => void;
  readonly onAgain: () => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

function Identity(props: { readonly debrief: DebriefModel }): JSX.Element {
  const data = (): DebriefData => props.debrief.data;
  return (
    <details class="hashes">
      <summary>{word('debrief.identity')}</summary>
      <div data-testid="score">{word('debrief.score', { score: String(data().reported) })}</div>
      <div data-testid="log-hash">{word('debrief.logHash', { hash: data().logHash })}</div>
      <div data-testid="state-hash">{word('debrief.stateHash', { hash: data().stateHash })}</div>
      <div>{word('debrief.engineHash', { hash: data().engineHash })}</div>
    </details>
  );
}

/** What happened beside the score: trips, going back, hints. */
function besides({ trips, wentBack, hintsOpened }: DebriefData): string[] {
  const told = trips.map(({ id, count }) => {
    const what = word(`debrief.trip.${id}`);
    return count > 1 ? word('debrief.times', { what, count: String(count) }) : what;
  });
  const said: string[] = [];
  if (told.length > 0) said.push(word('debrief.happenedToo', { list: told.join(word('debrief.join')) }));
  if (wentBack === 1) said.push(word('debrief.wentBackOnce'));
  if (wentBack > 1) said.push(word('debrief.wentBack', { count: String(wentBack) }));
  if (hintsOpened > 0) said.push(word('debrief.hints', { count: String(hintsOpened) }));
  return said;
}

function weighing({ isWeighing, suspects }: DebriefData): string {
  if (isWeighing) return word('debrief.suspects.weighing');
  return suspects === null ? '' : word('debrief.suspects.weighed');
}

function ScorePanel(props: { readonly debrief: DebriefModel }): JSX.Element {
  const data = (): DebriefData => props.debrief.data;
  const verdict = (): string => {
    if (!data().scored) return word('debrief.explored');
    const mark = String(data().passMark);
    return data().passed ? word('debrief.passed', { mark }) : word('debrief.notPassed', { mark });
  };
  const subtitle = (): string => {
    const minutes = String(Math.round(data().lastStep / STEPS_PER_SECOND / 60));
    return word('debrief.sub', { mode: props.debrief.modeName, seed: String(data().seed), minutes });
  };
  return (
    <section class="panel sc" aria-label={word('debrief.scoreTitle')} data-region tabIndex={-1}>
      <div class="row wrap">
        <Show when={data().scored}>
          <div>
            <span class="bigsc">{Math.round(data().reported)}</span>{' '}
            <span class="mut">{word('debrief.of')}</span>
          </div>
        </Show>
        <span class="sp" />
        <span class="chip" classList={{ on: data().passed && data().scored }}>
          <Show when={data().passed && data().scored}>
            <Icon name="tick" size={14} />
          </Show>
          {verdict()}
        </span>
      </div>
      <p class="s mut">
        {subtitle()}{' '}
        {data().criticalCount > 0
          ? word('debrief.critical', { count: String(data().criticalCount) })
          : word('debrief.noCritical')}
      </p>
      <p class="s mut" role="status">
        {weighing(data())}
      </p>
      <For each={besides(data())}>{(sentence) => <p class="s mut">{sentence}</p>}</For>
      <Show when={data().scored}>
        <DomainBars domains={data().domains} findings={data().findings} />
      </Show>
      <Identity debrief={props.debrief} />
    </section>
  );
}

export function Debrief(props: DebriefProps): JSX.Element {
  const [shown, setShown] = createSignal<Shown>('plot');
  const [cursorS, setCursorS] = createSignal<number | null>(null);
  const data = (): DebriefData => props.debrief.data;
  const pins = (): Pin[] =>
    data().actions.map((action) => ({ number: action.number, seconds: action.step / STEPS_PER_SECOND }));
  const show = (seconds: number): void => {
    setCursorS(seconds);
    if (shown() === 'table' || shown() === 'suspects') setShown('plot');
  };
  return (
    <div>
      <TopBar
        title={word('debrief.title', { name: props.debrief.title })}
        onHome={props.onHome}
        onMenu={props.onMenu}
        onHelp={props.onHelp}
      >
        <span class="sp" />
        <button type="button" class="btn sm hide-s" onClick={() => props.onSave()}>
          <Icon name="save" size={18} />
          {word('debrief.save')}
        </button>
        <button type="button" class="btn sm pri" onClick={() => props.onAgain()}>
          {word('debrief.again')}
        </button>
      </TopBar>
      <main class="debrief" id="main">
        <h1 class="vh">{word('debrief.title', { name: props.debrief.title })}</h1>
        <div class="dl">
          <ScorePanel debrief={props.debrief} />
          <Finds data={data()} units={props.debrief.units} onShow={show} />
        </div>
        <div class="dright">
          <section class="panel dr" aria-label={word('debrief.happened')} data-region tabIndex={-1}>
            <div class="row wrap">
              <h2>{word('debrief.happened')}</h2>
              <span class="sp" />
              <Show when={cursorS() !== null}>
                <span class="s mut">{word('debrief.at', { time: writeClock(cursorS() ?? 0) })}</span>
              </Show>
              <Segmented
                label={word('debrief.view')}
                options={[
                  { value: 'plot' as Shown, label: word('debrief.plot') },
                  { value: 'table' as Shown, label: word('debrief.table') },
                  { value: 'diagram' as Shown, label: word('debrief.diagram') },
                  { value: 'suspects' as Shown, label: word('debrief.suspects.title') },
                ]}
                value={shown()}
                onChoose={setShown}
              />
            </div>
            <div class="pw" tabIndex={0} role="group" aria-label={word('debrief.happened')}>
              <Switch>
                <Match when={shown() === 'plot'}>
                  <div class="wide-only">
                    <TimePlot
                      lanes={lanesOf(props.debrief)}
                      pins={pins()}
                      endS={data().lastStep / STEPS_PER_SECOND}
                      cursorS={cursorS()}
                    />
                  </div>
                  <div class="plots">
                    <For each={lanesOf(props.debrief)}>
                      {(lane) => (
                        <TimePlot
                          lanes={[lane]}
                          pins={[]}
                          endS={data().lastStep / STEPS_PER_SECOND}
                          cursorS={cursorS()}
                          width={390}
                          height={170}
                        />
                      )}
                    </For>
                  </div>
                </Match>
                <Match when={shown() === 'table'}>
                  <ActionTable debrief={props.debrief} />
                </Match>
                <Match when={shown() === 'suspects'}>
                  <DebriefSuspects debrief={props.debrief} onShow={show} />
                </Match>
                <Match when={shown() === 'diagram'}>
                  <MomentDiagram
                    debrief={props.debrief}
                    seconds={cursorS() ?? data().lastStep / STEPS_PER_SECOND}
                  />
                </Match>
              </Switch>
            </div>
          </section>
          <Actions debrief={props.debrief} chosenS={cursorS()} onShow={show} />
        </div>
      </main>
    </div>
  );
}
