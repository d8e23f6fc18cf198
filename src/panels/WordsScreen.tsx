/** The bay in words: the same car as lists and buttons, and a line that takes the words of the command line. */
import { For, type JSX, Show } from 'solid-js';
import { writeClock } from '../instruments/displayUnits';
import type { Line } from '../layout/layout';
import { loopLines } from '../layout/trace';
import { STEP_S } from '../plant/stepTime';
import { word } from '../words/words';
import { Briefing } from './Briefing';
import { benchToolName } from './benchTools';
import { CarRows } from './CarForm';
import { CautionPlate } from './CautionPlate';
import { ClockBar } from './ClockBar';
import { CommandLine, type Order } from './CommandLine';
import { carWords } from './carWords';
import { DecisionBar } from './DecisionBar';
import { Icon } from './Icon';
import { GaugeLadders, Meters } from './Instruments';
import { Deliveries, Findings } from './JobCard';
import { KeepsNothing } from './KeepsNothing';
import { seenOf } from './LookForm';
import OpenForm from './OpenForm';
import { portStands } from './PortTasks';
import { portName } from './portWords';
import { Stopped } from './Stopped';
import { Heard } from './sound/Heard';
import { ToolMeters } from './ToolMeters';
import { TopBar } from './TopBar';
import type { WorkUi } from './workUi';

export interface WordsScreenProps {
  readonly ui: WorkUi;
  /** A line as `sit` takes it; answers with what it could not make of it. */
  readonly onLine: (line: string) => string | null;
  readonly orders: () => readonly Order[];
  /** What just happened, in words. */
  readonly heard: () => readonly { readonly step: number; readonly text: string }[];
  readonly onConnect: (hose: string, port: string) => void;
  readonly onBay: () => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

/** Lines of the loop one after another with the flow, from the compressor's outlet round to its inlet. */
function inFlowOrder(lines: readonly Line[]): Line[] {
  const ordered: Line[] = [];
  let from = lines.find((line) => line.from?.startsWith('compressor'))?.from;
  while (ordered.length < lines.length) {
    const next = lines.find((line) => line.from === from && !ordered.includes(line));
    if (!next) return [...ordered, ...lines.filter((line) => !ordered.includes(line))];
    ordered.push(next);
    from = next.to;
  }
  return ordered;
}

function Parts(props: { readonly ui: WorkUi }): JSX.Element {
  const session = props.ui.session;
  const lines = () => inFlowOrder(loopLines(session.layout));
  const look = (id: string): void => {
    session.send({ do: 'look', at: id });
    props.ui.show({ kind: 'part', part: id });
  };
  const named = () => session.layout.parts.filter((part) => part.name !== undefined);
  const Item = (item: { readonly id: string }): JSX.Element => (
    <li>
      <b>{session.nameOf(item.id)}</b> {seenOf(session, item.id).join(' ')}{' '}
      <button
        type="button"
        class="linkb"
        aria-label={word('words.lookAt', { part: session.nameOf(item.id) })}
        onClick={() => look(item.id)}
      >
        {word('words.look')}
      </button>
    </li>
  );
  return (
    <>
      <details open>
        <summary>{word('words.loop')}</summary>
        <ul class="tl">
          <For each={lines()}>{(line) => <Item id={line.id} />}</For>
        </ul>
      </details>
      <details>
        <summary>{word('words.parts', { count: String(named().length) })}</summary>
        <ul class="tl">
          <For each={named()}>{(part) => <Item id={part.id} />}</For>
        </ul>
      </details>
    </>
  );
}

function Ports(props: { readonly ui: WorkUi }): JSX.Element {
  const session = props.ui.session;
  return (
    <details open>
      <summary>{word('words.ports')}</summary>
      <ul class="tl">
        <For each={session.view().ports}>
          {(port) => (
            <li>
              <b>{portName(session, port.id)}</b> {portStands(port)}{' '}
              <button
                type="button"
                class="linkb"
                aria-label={word('words.lookAt', { part: portName(session, port.id) })}
                onClick={() => props.ui.show({ kind: 'port', port: port.id })}
              >
                {word('words.look')}
              </button>
            </li>
          )}
        </For>
      </ul>
    </details>
  );
}

function Tools(props: { readonly ui: WorkUi }): JSX.Element {
  const session = props.ui.session;
  const gear = (item: 'goggles' | 'gloves' | 'overall', name: string): JSX.Element => {
    const worn = (): boolean => session.view().worn.includes(item);
    return (
      <button
        type="button"
        class="btn sm"
        aria-pressed={worn()}
        onClick={() => session.send({ do: worn() ? 'take-off' : 'wear', item })}
      >
        {name}
      </button>
    );
  };
  const tool = (id: string, name: string): JSX.Element => (
    <button type="button" class="btn sm" onClick={() => props.ui.take(id)}>
      {name}
    </button>
  );
  const has = (id: string): boolean => session.view().hoses.some((hose) => hose.id === id);
  return (
    <div class="row wrap">
      {gear('goggles', word('work.bench.goggles'))}
      {gear('gloves', word('work.bench.gloves'))}
      {gear('overall', word('task.gear.overall'))}
      <Show when={has('gauge-low')}>{tool('gauge-set', word('work.bench.gaugeSet'))}</Show>
      <Show when={has('charging')}>{tool('charging', word('work.bench.charging'))}</Show>
      <For each={session.view().cans}>{(can) => tool(can.id, session.nameOf(can.id))}</For>
      {tool('scale', word('work.bench.scale'))}
      {tool('air', word('work.bench.air'))}
      {tool('line', word('work.bench.line'))}
      <For each={session.facts.tools}>{(id) => tool(id, benchToolName(id))}</For>
      <button type="button" class="btn sm" onClick={() => props.ui.show({ kind: 'sheet' })}>
        {word('work.serviceInformation')}
      </button>
    </div>
  );
}

export function WordsScreen(props: WordsScreenProps): JSX.Element {
  const session = props.ui.session;
  const car = () => carWords(session);
  return (
    <div>
      <TopBar title={session.facts.title} onHome={props.onHome} onMenu={props.onMenu} onHelp={props.onHelp}>
        <span class="sp" />
        <ClockBar session={session} />
        <button type="button" class="btn sm" aria-label={word('work.drawnBay')} onClick={() => props.onBay()}>
          <Icon name="eye" size={18} />
          <span class="hide-s">{word('work.drawnBay')}</span>
        </button>
      </TopBar>
      <main class="txt" id="main" tabIndex={-1}>
        <h1 class="vh">{session.facts.title}</h1>
        <KeepsNothing ui={props.ui} />
        <section aria-label={word('work.region.instruments')} data-region tabIndex={-1}>
          <h2>{word('work.region.instruments')}</h2>
          <GaugeLadders session={session} />
          <ToolMeters session={session} />
          <Meters session={session} />
        </section>
        <section aria-label={word('work.region.bay')} data-region tabIndex={-1}>
          <h2>{word('work.region.bay')}</h2>
          <p class="s mut">
            {car().engine}. {car().cabin}. {car().door}.
          </p>
          <Heard session={session} />
          <Parts ui={props.ui} />
          <Ports ui={props.ui} />
        </section>
        <section aria-label={word('words.doNow')} data-region tabIndex={-1}>
          <h2>{word('words.doNow')}</h2>
          <Tools ui={props.ui} />
          <CommandLine
            onLine={props.onLine}
            orders={props.orders}
            outcome={props.ui.open() === null ? session.notice()?.text : undefined}
          />
          <CarRows session={session} />
        </section>
        <section aria-label={word('work.region.jobCard')} data-region tabIndex={-1}>
          <h2>{word('work.card.title')}</h2>
          <p class="quote">{word('shelf.say', { complaint: session.facts.complaint })}</p>
          <Deliveries session={session} />
          <Findings session={session} />
          <button type="button" class="btn sm" onClick={() => props.ui.show({ kind: 'finding' })}>
            {word('work.card.write')}
          </button>
          <button type="button" class="btn sm" onClick={() => props.ui.show({ kind: 'label' })}>
            {word('work.card.label')}
          </button>
          <button type="button" class="btn sm" onClick={() => props.ui.show({ kind: 'entries' })}>
            {word('task.entries.open')}
          </button>
        </section>
        <section aria-label={word('words.heard')} data-region tabIndex={-1}>
          <h2>{word('words.heard')}</h2>
          <ul class="fnd">
            <For each={props.heard()}>
              {(line) => (
                <li>
                  <time>{writeClock(line.step * STEP_S)}</time>
                  <span>{line.text}</span>
                </li>
              )}
            </For>
          </ul>
        </section>
      </main>
      <DecisionBar session={session} onForm={(kind) => props.ui.show({ kind })} />
      <div class="over-words" classList={{ on: props.ui.open() !== null || props.ui.caution() !== null }}>
        <OpenForm ui={props.ui} onConnect={props.onConnect} />
        <Show when={props.ui.caution()}>
          {(standing) => (
            <CautionPlate id={standing().caution.id} onSafe={props.ui.answerSafe} onGo={props.ui.answerGo} />
          )}
        </Show>
      </div>
      <Show when={session.view().stopped}>
        {(stop) => (
          <div class="over-words on">
            <Stopped session={session} stop={stop()} />
          </div>
        )}
      </Show>
      <Show when={session.view().phase === 'briefing'}>
        <Briefing session={session} />
      </Show>
    </div>
  );
}
