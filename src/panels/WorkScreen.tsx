/** The work screen put together: top bar with the clock, instruments, bay, bench, job card, decisions. */
import { type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { BayPanel, type BayPanelProps } from './BayPanel';
import { Bench } from './Bench';
import { Briefing } from './Briefing';
import { ClockBar } from './ClockBar';
import { DecisionBar } from './DecisionBar';
import { Icon } from './Icon';
import { Instruments } from './Instruments';
import { JobCard } from './JobCard';
import { TopBar } from './TopBar';

export interface WorkScreenProps extends BayPanelProps {
  readonly onHome: () => void;
  readonly onHelp: () => void;
  readonly onMenu: () => void;
  readonly onInside: () => void;
  readonly onWords: () => void;
}

const modeWord = (mode: 'explore' | 'practice' | 'assessed'): string =>
  mode === 'explore'
    ? word('app.mode.explore')
    : mode === 'practice'
      ? word('app.mode.practice')
      : word('app.mode.assessed');

function WorkTop(props: WorkScreenProps): JSX.Element {
  const session = props.ui.session;
  return (
    <TopBar title={session.facts.title} onHome={props.onHome} onHelp={props.onHelp} onMenu={props.onMenu}>
      <span class="chip modec">{modeWord(session.mode)}</span>
      <button
        type="button"
        class="btn sm only-l"
        onClick={() => props.ui.setTab(props.ui.tab() === 'job' ? 'instruments' : 'job')}
      >
        {word('work.card.title')}
      </button>
      <span class="sp" />
      <ClockBar session={session} />
      <button
        type="button"
        class="btn sm hide-s"
        aria-label={word('work.serviceInformation')}
        onClick={() => props.ui.show({ kind: 'sheet' })}
      >
        <Icon name="doc" size={18} />
        <Show when={session.mode === 'assessed'}>
          <span class="hide-m">{word('work.serviceInformation')}</span>
        </Show>
      </button>
      <Show when={session.mode !== 'assessed'}>
        <button
          type="button"
          class="btn sm hide-s"
          aria-label={word('work.seeInside')}
          onClick={() => props.onInside()}
        >
          <Icon name="eye" size={18} />
          <span class="hide-m">{word('work.seeInside')}</span>
        </button>
      </Show>
      <button
        type="button"
        class="icb hide-s hide-f"
        aria-label={word('work.inWords')}
        onClick={() => props.onWords()}
      >
        <Icon name="text" />
      </button>
    </TopBar>
  );
}

function Tabs(props: WorkScreenProps): JSX.Element {
  const tab = (name: 'instruments' | 'job', label: string): JSX.Element => (
    <button
      type="button"
      classList={{ on: props.ui.tab() === name }}
      aria-pressed={props.ui.tab() === name}
      onClick={() => props.ui.setTab(name)}
    >
      {label}
    </button>
  );
  return (
    <nav class="tabs" aria-label={word('work.region.panels')}>
      {tab('instruments', word('work.tabs.instruments'))}
      {tab('job', word('work.tabs.jobCard'))}
      <Show when={props.ui.session.mode !== 'assessed'}>
        <button type="button" onClick={() => props.onInside()}>
          {word('work.tabs.inside')}
        </button>
      </Show>
    </nav>
  );
}

export function WorkScreen(props: WorkScreenProps): JSX.Element {
  const session = props.ui.session;
  return (
    <div
      class="work"
      classList={{
        'tab-job': props.ui.tab() === 'job',
        'has-form': props.ui.open() !== null && props.ui.open()?.kind !== 'hint',
        lapse: session.clock().lapse >= 10,
        'read-only': session.readOnly(),
      }}
    >
      <WorkTop {...props} />
      <Instruments session={session} onHistory={() => props.ui.show({ kind: 'history' })} />
      <BayPanel ui={props.ui} onHost={props.onHost} onZoom={props.onZoom} onConnect={props.onConnect} />
      <Bench session={session} held={props.ui.heldTool()} onTake={props.ui.take} />
      <Tabs {...props} />
      <JobCard
        session={session}
        onWrite={() => props.ui.show({ kind: 'finding' })}
        onLabel={() => props.ui.show({ kind: 'label' })}
        onEntries={() => props.ui.show({ kind: 'entries' })}
      />
      <DecisionBar session={session} onForm={(kind) => props.ui.show({ kind })} />
      <Show when={session.view().phase === 'briefing'}>
        <Briefing session={session} />
      </Show>
    </div>
  );
}
