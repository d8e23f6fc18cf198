/**
 * The debrief in four parts one can move between: what happened, what you thought, why, next time. The score is not shown
 * before its part; what happened over time stays beside all of them.
 */
import { For, type JSX, Match, Show, Switch } from 'solid-js';
import { word } from '../words/words';
import { DebriefHappened } from './DebriefHappened';
import { DebriefNext } from './DebriefNext';
import { DebriefScore, Finds } from './DebriefScore';
import { DebriefStory, GoToMoment } from './DebriefStory';
import { DebriefThought } from './DebriefThought';
import { type DebriefData, type DebriefModel, PARTS, type Part, type Place } from './debriefModel';
import { Icon } from './Icon';
import { TopBar } from './TopBar';
import { WhatIf } from './WhatIf';

export interface DebriefProps {
  readonly debrief: DebriefModel;
  readonly onSave: () => void;
  readonly onAgain: () => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

const partName = (part: Part): string => word(`debrief.steps.${part}`);

function Parts(props: { readonly part: Part; readonly onChoose: (part: Part) => void }): JSX.Element {
  return (
    <nav class="steps" aria-label={word('debrief.steps.label')}>
      <For each={PARTS}>
        {(part, at) => (
          <button
            type="button"
            aria-current={props.part === part ? 'step' : undefined}
            aria-label={word('debrief.steps.step', { number: String(at() + 1), name: partName(part) })}
            data-part={part}
            onClick={() => props.onChoose(part)}
          >
            <b>{at() + 1}</b>
            <span>{partName(part)}</span>
          </button>
        )}
      </For>
    </nav>
  );
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

function On(props: { readonly to: Part; readonly onChoose: (part: Part) => void }): JSX.Element {
  return (
    <button type="button" class="btn pri on-to" onClick={() => props.onChoose(props.to)}>
      {word('debrief.steps.on', { name: partName(props.to) })}
    </button>
  );
}

export function Debrief(props: DebriefProps): JSX.Element {
  const { part, setPart, shown, setShown, place, setPlace } = props.debrief.reading;
  const choosePart = (wanted: Part): void => {
    setPart(wanted);
    if (wanted !== 'why' && shown() === 'suspects') setShown('plot');
    document.querySelector('.dl')?.scrollTo({ top: 0 });
  };
  const see = (at: Place): void => {
    setPlace(at);
    setShown('moment');
  };
  /** Marks a moment on whatever is shown; the table and the suspects have no mark. */
  const mark = (seconds: number): void => {
    setPlace({ seconds, deed: null });
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
        <Parts part={part()} onChoose={choosePart} />
        <button type="button" class="btn sm hide-s" onClick={() => props.onSave()}>
          <Icon name="save" size={18} />
          <span>{word('debrief.save')}</span>
        </button>
        <button type="button" class="btn sm pri hide-s" onClick={() => props.onAgain()}>
          {word('debrief.again')}
        </button>
      </TopBar>
      <main class={`debrief at-${part()}`} id="main">
        <h1 class="vh">{word('debrief.title', { name: props.debrief.title })}</h1>
        <div class="dl">
          <Switch>
            <Match when={part() === 'happened'}>
              <DebriefStory
                debrief={props.debrief}
                onShow={see}
                identity={<Identity debrief={props.debrief} />}
              />
              <On to="thought" onChoose={choosePart} />
            </Match>
            <Match when={part() === 'thought'}>
              <DebriefThought debrief={props.debrief} onDone={() => choosePart('why')} />
              <GoToMoment debrief={props.debrief} onShow={see} />
            </Match>
            <Match when={part() === 'why'}>
              <DebriefScore debrief={props.debrief} identity={<Identity debrief={props.debrief} />} />
              <Finds data={props.debrief.data} units={props.debrief.units} onShow={see} />
              <On to="next" onChoose={choosePart} />
            </Match>
            <Match when={part() === 'next'}>
              <DebriefNext debrief={props.debrief} />
              <div class="row only-s">
                <button type="button" class="btn sm" onClick={() => props.onSave()}>
                  {word('debrief.save')}
                </button>
                <button type="button" class="btn sm" onClick={() => props.onAgain()}>
                  {word('debrief.again')}
                </button>
              </div>
            </Match>
          </Switch>
        </div>
        <div class="dright">
          <DebriefHappened
            debrief={props.debrief}
            shown={shown()}
            place={place()}
            hasSuspects={part() === 'why'}
            onShown={setShown}
            onPlace={(at) => (shown() === 'moment' ? setPlace(at) : mark(at.seconds))}
          />
          <Show when={part() === 'why' && shown() !== 'moment'}>
            <WhatIf debrief={props.debrief} whatIf={props.debrief.whatIf} onShow={mark} />
          </Show>
        </div>
      </main>
    </div>
  );
}
