/** The frame of the bay: the drawing itself is put into the host; over it lie status, zoom, car controls and forms. */
import { createSignal, type JSX, Show } from 'solid-js';
import { hazardsOf } from '../layout/zones';
import { word } from '../words/words';
import { CautionPlate, WarningSign } from './CautionPlate';
import { calm } from './calm';
import { carWords } from './carWords';
import { IconButton } from './controls';
import { FormHere } from './FormHere';
import { Icon } from './Icon';
import { KeepsNothing } from './KeepsNothing';
import { Stopped } from './Stopped';
import { Heard } from './sound/Heard';
import type { WorkUi } from './workUi';

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
      <button type="button" class="btn sm hide-s hide-p" onClick={toggleDoor}>
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
  const spoken = calm(() => notice()?.text ?? '');
  return (
    <div class="ov stw">
      <div role="status" class="vh">
        {spoken()}
      </div>
      <div aria-hidden="true">
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
      <KeepsNothing ui={props.ui} />
      <Heard session={props.ui.session} />
    </div>
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
      <Show when={props.ui.open() !== null}>
        <FormHere ui={props.ui} onConnect={props.onConnect} />
      </Show>
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
