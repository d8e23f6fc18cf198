/** The frame of the bay: the drawing itself is put into the host; over it lie status, zoom, car controls and forms. */
import { createSignal, type JSX, Match, Show, Switch } from 'solid-js';
import { hazardsOf } from '../layout/zones';
import { word } from '../words/words';
import { CarForm } from './CarForm';
import { CauseForm } from './CauseForm';
import { CautionPlate, WarningSign } from './CautionPlate';
import { carWords } from './carWords';
import { IconButton } from './controls';
import { EntriesForm } from './EntriesForm';
import { FindingForm } from './FindingForm';
import { Outcome } from './Form';
import { HintPanel } from './HintPanel';
import { HistoryForm } from './HistoryForm';
import { Icon } from './Icon';
import { LookForm, PortForm } from './LookForm';
import { SheetForm } from './SheetForm';
import { Stopped } from './Stopped';
import { FinishForm, LabelForm, ReferForm } from './smallForms';
import { Heard } from './sound/Heard';
import { ToolForm } from './ToolForm';
import type { Open, WorkUi } from './workUi';

export type ZoomStep = 'nearer' | 'farther' | 'whole';

function Zoom(props: { readonly onZoom: (step: ZoomStep) => void }): JSX.Element {
  return (
    <div class="ov zoomc" role="group" aria-label={word('work.region.view')}>
      <IconButton icon="zin" label={word('work.zoom.nearer')} onPress={() => props.onZoom('nearer')} />
      <IconButton icon="zout" label={word('work.zoom.farther')} onPress={() => props.onZoom('farther')} />
      <IconButton icon="fit" label={word('work.zoom.whole')} onPress={() => props.onZoom('whole')} />
    </div>
  );
}

function CarControls(props: { readonly ui: WorkUi }): JSX.Element {
  const words = () => carWords(props.ui.session);
  const toggleDoor = (): void => {
    const isOpen = props.ui.session.signal('door.open') === 1;
    props.ui.session.send({ do: 'door', to: isOpen ? 'shut' : 'open' });
  };
  return (
    <div class="ov ctl" role="group" aria-label={word('work.region.car')}>
      <button type="button" class="btn sm" onClick={() => props.ui.show({ kind: 'car' })}>
        <Icon name="key" size={18} />
        {words().engine}
      </button>
      <button type="button" class="btn sm hide-s hide-m" onClick={() => props.ui.show({ kind: 'car' })}>
        <Icon name="fan" size={18} />
        {words().cabin}
      </button>
      <button type="button" class="btn sm hide-s" aria-pressed={false} onClick={toggleDoor}>
        <Icon name="door" size={18} />
        {words().door}
      </button>
    </div>
  );
}

/** Standing conditions: said in a slim plate as long as they hold. */
function SlimCautions(props: { readonly ui: WorkUi }): JSX.Element {
  const session = props.ui.session;
  const doorShut = (): boolean => session.signal('door.open') === 0;
  const inZone = (): boolean =>
    session
      .view()
      .hoses.some((hose) => hose.port !== null && hazardsOf(session.layout, hose.route).length > 0);
  return (
    <>
      <Show when={doorShut()}>
        <div class="slim-caution">
          <WarningSign />
          <span>{word('caution.slim.door')}</span>
          <button type="button" class="btn sm" onClick={() => session.send({ do: 'door', to: 'open' })}>
            {word('caution.slim.openDoor')}
          </button>
        </div>
      </Show>
      <Show when={inZone()}>
        <div class="slim-caution">
          <WarningSign />
          <span>{word('caution.slim.hose')}</span>
        </div>
      </Show>
    </>
  );
}

function Status(props: { readonly ui: WorkUi }): JSX.Element {
  const inForm = (): boolean => props.ui.open() !== null && props.ui.open()?.kind !== 'hint';
  const notice = () => (inForm() ? null : props.ui.session.notice());
  return (
    <div class="ov stw">
      <div role="status">
        <Show when={notice()}>
          {(line) => (
            <span class="status">
              <Icon name={line().icon} size={16} />
              {line().text}
            </span>
          )}
        </Show>
      </div>
      <SlimCautions ui={props.ui} />
      <Heard session={props.ui.session} />
    </div>
  );
}

const as = <K extends Open['kind']>(open: Open | null, kind: K): Extract<Open, { kind: K }> | undefined =>
  open?.kind === kind ? (open as Extract<Open, { kind: K }>) : undefined;

export function OpenForm(props: {
  readonly ui: WorkUi;
  readonly onConnect: (hose: string, port: string) => void;
}): JSX.Element {
  const open = () => props.ui.open();
  const session = props.ui.session;
  const close = props.ui.close;
  return (
    <Outcome.Provider value={session.notice}>
      <Switch>
        <Match when={as(open(), 'tool')}>
          {(one) => (
            <ToolForm session={session} tool={one().tool} picture={props.ui.picture()} onClose={close} />
          )}
        </Match>
        <Match when={as(open(), 'port')}>
          {(one) => (
            <PortForm
              session={session}
              portId={one().port}
              picture={props.ui.picture()}
              heldHose={null}
              onConnect={props.onConnect}
              onClose={close}
            />
          )}
        </Match>
        <Match when={as(open(), 'part')}>
          {(one) => (
            <LookForm session={session} part={one().part} picture={props.ui.picture()} onClose={close} />
          )}
        </Match>
        <Match when={as(open(), 'finding')}>
          <FindingForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'cause')}>
          <CauseForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'refer')}>
          <ReferForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'label')}>
          <LabelForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'entries')}>
          <EntriesForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'sheet')}>
          <SheetForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'history')}>
          <HistoryForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'car')}>
          <CarForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'finish')}>
          <FinishForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'hint')}>
          <HintPanel session={session} onClose={close} />
        </Match>
      </Switch>
    </Outcome.Provider>
  );
}

export interface BayPanelProps {
  readonly ui: WorkUi;
  /** The drawing's host is ready. */
  readonly onHost: (host: HTMLElement) => void;
  readonly onZoom: (step: ZoomStep) => void;
  readonly onConnect: (hose: string, port: string) => void;
}

export function BayPanel(props: BayPanelProps): JSX.Element {
  const [looking, setLooking] = createSignal(false);
  const session = props.ui.session;
  return (
    <main class="bay" aria-label={word('work.region.bay')} data-region tabIndex={-1} id="main">
      <h1 class="vh">{session.facts.title}</h1>
      <div class="bay-host" inert={props.ui.caution() !== null} ref={(host) => props.onHost(host)} />
      <Status ui={props.ui} />
      <Zoom onZoom={props.onZoom} />
      <CarControls ui={props.ui} />
      <OpenForm ui={props.ui} onConnect={props.onConnect} />
      <Show when={props.ui.caution()}>
        {(standing) => (
          <CautionPlate id={standing().caution.id} onSafe={props.ui.answerSafe} onGo={props.ui.answerGo} />
        )}
      </Show>
      <Show when={session.view().stopped}>{(stop) => <Stopped session={session} stop={stop()} />}</Show>
      <Show when={session.readOnly() && !looking()}>
        <div class="ov two">
          <div class="note2" role="status">
            <h2>{word('app.tabs.title')}</h2>
            <p class="s mut">{word('app.tabs.text')}</p>
            <button type="button" class="btn" onClick={() => setLooking(true)}>
              {word('work.twoTabs')}
            </button>
          </div>
        </div>
      </Show>
    </main>
  );
}
