/** Look closer: what can be seen of a part, and for a port its cap, its line and the trainee's own judgement of its side. */
import { For, type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import type { Layout } from '../layout/layout';
import { placesAt } from '../layout/placesAt';
import type { HoseView } from '../session/corePort';
import { word } from '../words/words';
import { CloseUp, type Picture } from './CloseUp';
import { Segmented } from './controls';
import { Form } from './Form';
import { formSide } from './formSide';
import { PartTasks } from './PartTasks';
import { CoverButton, PortTasks, portStands } from './PortTasks';
import { hoseName, portName, traceSentence } from './portWords';
import { RepairRows } from './RepairRows';
import type { SessionModel } from './sessionModel';

/** Below these shares nothing is to be seen. */
const SEEN = 0.03;
/** Share of its speed below which a fan is seen to turn slowly. */
const SLOW_BELOW = 0.8;

/** Sentences about a part, from the cues that a person at the bumper has. */
export function seenOf(session: SessionModel, id: string): string[] {
  const share = (value: number): string => plainNumber(value * 100);
  const said: string[] = [];
  const frost = session.signal(`frost.${id}`);
  const sweat = session.signal(`sweat.${id}`);
  if (frost > SEEN) said.push(word('panels.look.frost', { share: share(frost) }));
  else if (sweat > SEEN) said.push(word('panels.look.sweat'));
  else if (!Number.isNaN(frost) || !Number.isNaN(sweat)) said.push(word('panels.look.dry'));
  const fan = session.signal(`fan.${id}.turning`);
  if (!Number.isNaN(fan)) said.push(turningWord(fan === 1, session.signal(`fan.${id}.speedRatio`)));
  const blower = id === 'blower' ? session.signal('blower.turning') : Number.NaN;
  if (!Number.isNaN(blower)) said.push(turningWord(blower === 1, 1));
  const dirt = session.signal(`dirt.${id}`);
  if (!Number.isNaN(dirt)) said.push(dirt > 0 ? word('panels.look.dirty') : word('panels.look.clean'));
  const isClutch = session.layout.parts.some(
    (part) => part.id === id && (part.kind.startsWith('compressor') || part.kind.includes('clutch')),
  );
  if (isClutch && session.signal('car.ready') !== 1)
    said.push(
      session.signal('clutch.turning') === 1 ? word('panels.look.clutchIn') : word('panels.look.clutchOut'),
    );
  return [...said, ...marksOf(session, id), ...glassOf(session, id)];
}

/** Oil, foam and dye at the places that are seen with a thing. */
function marksOf(session: SessionModel, id: string): string[] {
  const soap = session.probeAt('soap');
  const lamp = session.probeAt('lamp');
  return placesSeen(session.layout, id).flatMap((at) => {
    const place = session.nameOf(at);
    return [
      ...(session.signal(`stain.${at}`) > 0 ? [word('panels.look.stain', { place })] : []),
      ...(soap === place && session.signal('soap.bubbles') >= 0
        ? [word(session.signal('soap.bubbles') > 0 ? 'panels.look.foam' : 'panels.look.noFoam', { place })]
        : []),
      ...(lamp === place && session.signal('lamp.glow') > 0 ? [word('panels.look.glow', { place })] : []),
    ];
  });
}

/** With a clutch its compressor's shaft is seen. */
function placesSeen(layout: Layout, id: string): readonly string[] {
  const isClutch = layout.parts.some((part) => part.id === id && part.kind.startsWith('clutch'));
  const compressor = layout.parts.find((part) => part.kind.startsWith('compressor'));
  return isClutch && compressor ? [id, compressor.id] : placesAt(layout, id);
}

function glassOf(session: SessionModel, id: string): string[] {
  const bubbles = session.signal('sightGlass.bubblesRatio');
  if (Number.isNaN(bubbles) || session.layout.parts.every((part) => part.id !== id || part.kind !== 'drier'))
    return [];
  if (session.signal('sightGlass.streaked') === 1) return [word('panels.look.glassStreaked')];
  return [word(bubbles > 0 ? 'panels.look.glassBubbles' : 'panels.look.glassClear')];
}

function turningWord(isTurning: boolean, speedRatio: number): string {
  if (!isTurning) return word('panels.look.still');
  return speedRatio < SLOW_BELOW ? word('panels.look.slow') : word('panels.look.turning');
}

export function LookForm(props: {
  readonly session: SessionModel;
  readonly part: string;
  readonly picture: Picture | null;
  readonly onClose: () => void;
}): JSX.Element {
  const clampHere = (): boolean => props.session.choices('line-place').includes(props.part);
  return (
    <Form
      title={props.session.nameOf(props.part)}
      sub={word('panels.look.sub')}
      class={formSide(props.part)}
      closeLabel={word('app.close')}
      onClose={props.onClose}
    >
      <CloseUp session={props.session} id={props.part} picture={props.picture} />
      <ul class="tl">
        <For each={seenOf(props.session, props.part)}>{(sentence) => <li>{sentence}</li>}</For>
      </ul>
      <Show when={clampHere()}>
        <button
          type="button"
          class="btn sm"
          onClick={() => props.session.send({ do: 'probe-line', at: props.part })}
        >
          {word('panels.look.probe')}
        </button>
      </Show>
      <PartTasks session={props.session} part={props.part} />
      <RepairRows session={props.session} id={props.part} />
    </Form>
  );
}

/** A coupler that stands on the port: its valve first, then the way off. */
function CouplerRow(props: { readonly session: SessionModel; readonly hose: HoseView }): JSX.Element {
  const { send } = props.session;
  const toggle = (): void =>
    send({ do: 'coupler', hose: props.hose.id, to: props.hose.couplerOpen ? 'shut' : 'open' });
  return (
    <div class="row wrap">
      <button type="button" class="btn pri" data-next onClick={toggle}>
        {props.hose.couplerOpen ? word('panels.port.shutValve') : word('panels.port.openValve')}
      </button>
      <button type="button" class="btn sm" onClick={() => send({ do: 'uncouple', hose: props.hose.id })}>
        {word('panels.hose.takeOff')}
      </button>
    </div>
  );
}

export function PortForm(props: {
  readonly session: SessionModel;
  readonly portId: string;
  readonly picture: Picture | null;
  /** Hose in hand, if any. */
  readonly heldHose: string | null;
  readonly onConnect: (hose: string, port: string) => void;
  readonly onClose: () => void;
}): JSX.Element {
  const layoutPort = () => props.session.layout.ports.find((port) => port.id === props.portId);
  const port = () => props.session.view().ports.find((one) => one.id === props.portId);
  const coupled = () => props.session.view().hoses.find((one) => one.port === props.portId);
  const send = props.session.send;
  return (
    <Show when={port()}>
      {(one) => (
        <Form
          title={portName(props.session, props.portId)}
          sub={portStands(one())}
          class={formSide(props.portId)}
          closeLabel={word('app.close')}
          onClose={props.onClose}
        >
          <CloseUp session={props.session} id={props.portId} picture={props.picture} />
          <ul class="tl">
            <For each={seenOf(props.session, props.portId)}>{(sentence) => <li>{sentence}</li>}</For>
          </ul>
          <Show when={coupled()}>{(hose) => <CouplerRow session={props.session} hose={hose()} />}</Show>
          <div class="row wrap">
            <CoverButton session={props.session} port={one()} />
            <Show when={one().hose === null}>
              <button
                type="button"
                class="btn sm"
                onClick={() => send({ do: 'cap', port: props.portId, to: one().capOn ? 'off' : 'on' })}
              >
                {one().capOn ? word('panels.port.takeCap') : word('panels.port.putCap')}
              </button>
            </Show>
            <button type="button" class="btn sm" onClick={() => send({ do: 'trace', port: props.portId })}>
              {word('panels.port.trace')}
            </button>
          </div>
          <Show when={one().traced && layoutPort()}>
            <p class="slim-note">{traceSentence(props.session, props.portId)}</p>
          </Show>
          <div class="stack">
            <b class="s">{word('panels.port.judge')}</b>
            <Segmented
              deed
              label={word('panels.port.judge')}
              options={[
                { value: 'low' as const, label: word('panels.port.low') },
                { value: 'high' as const, label: word('panels.port.high') },
              ]}
              value={one().judged}
              onChoose={(side) => send({ do: 'judge-port', port: props.portId, side })}
            />
          </div>
          <PortTasks session={props.session} portId={props.portId} />
          <Show when={one().hose === null}>
            <div class="row wrap">
              <For
                each={props.session
                  .view()
                  .hoses.filter((hose) => hose.port === null && hose.id !== 'utility')}
              >
                {(hose) => (
                  <button type="button" class="btn sm" onClick={() => props.onConnect(hose.id, props.portId)}>
                    {word('panels.hose.connect', { hose: hoseName(hose.id) })}{' '}
                    {portName(props.session, props.portId)}
                  </button>
                )}
              </For>
            </div>
          </Show>
        </Form>
      )}
    </Show>
  );
}
