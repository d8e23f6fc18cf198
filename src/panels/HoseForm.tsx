/** A hose in words: which port, laid how, coupler open or shut, zeroed, purged. Every button is one command. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { routesOf } from '../layout/zones';
import type { HoseView } from '../session/corePort';
import { word } from '../words/words';
import { CloseUp, type Picture } from './CloseUp';
import { PurgeButtons } from './PurgeButtons';
import { hoseName, portName, routeName, zonesInWords } from './portWords';
import type { SessionModel } from './sessionModel';

const GAUGE_OF: Readonly<Record<string, string>> = {
  charging: 'charging',
  'gauge-low': 'low',
  'gauge-high': 'high',
};

function Lying(props: { readonly session: SessionModel; readonly hose: HoseView }): JSX.Element {
  const coupler = (): string =>
    props.hose.couplerOpen ? word('panels.hose.coupledOpen') : word('panels.hose.coupledShut');
  const sentence = (): string => {
    if (props.hose.caught) return word('panels.hose.caught');
    if (props.hose.port === null) return word('panels.hose.loose');
    return word('panels.hose.onPort', { port: portName(props.session, props.hose.port), state: coupler() });
  };
  return (
    <p class="s mut">
      {sentence()}
      <Show when={props.hose.port !== null && props.hose.route.length > 0}>
        {' '}
        {word('panels.hose.routeThrough', { zones: zonesInWords(props.session, props.hose.route) })}
      </Show>
    </p>
  );
}

/** Port and way, then one press: the keyboard's form of carrying a coupler over. */
function ConnectRows(props: { readonly session: SessionModel; readonly hose: HoseView }): JSX.Element {
  const send = (port: string, through: readonly string[]): void =>
    props.session.send({ do: 'couple', hose: props.hose.id, port, route: through.join(',') });
  const label = (): string => word('panels.hose.connect', { hose: hoseName(props.hose.id) });
  return (
    <For each={props.session.layout.ports}>
      {(port) => (
        <RouteRow
          session={props.session}
          portId={port.id}
          label={label()}
          press={`${label()} ${portName(props.session, port.id)}`}
          onLay={(through) => send(port.id, through)}
        />
      )}
    </For>
  );
}

function RouteRow(props: {
  readonly session: SessionModel;
  readonly portId: string;
  readonly label: string;
  /** What the button says. */
  readonly press: string;
  readonly onLay: (through: readonly string[]) => void;
}): JSX.Element {
  const routes = () => routesOf(props.session.layout, props.portId);
  const [chosen, setChosen] = createSignal(0);
  return (
    <div class="do-row">
      <label class="field s">
        <span>
          {props.label}: {portName(props.session, props.portId)}
        </span>
        <select onChange={(event) => setChosen(event.currentTarget.selectedIndex)}>
          <For each={routes()}>{(route) => <option>{routeName(props.session, route)}</option>}</For>
        </select>
      </label>
      <button type="button" class="btn sm" onClick={() => props.onLay(routes()[chosen()]?.through ?? [])}>
        {props.press}
      </button>
    </div>
  );
}

function CoupledRows(props: {
  readonly session: SessionModel;
  readonly hose: HoseView;
  readonly port: string;
}): JSX.Element {
  const send = (to: 'open' | 'shut'): void => props.session.send({ do: 'coupler', hose: props.hose.id, to });
  return (
    <>
      <div class="row wrap">
        <button
          type="button"
          class="btn sm"
          data-next
          onClick={() => send(props.hose.couplerOpen ? 'shut' : 'open')}
        >
          {props.hose.couplerOpen ? word('panels.hose.shut') : word('panels.hose.open')}
        </button>
        <button
          type="button"
          class="btn sm"
          onClick={() => props.session.send({ do: 'uncouple', hose: props.hose.id })}
        >
          {word('panels.hose.takeOff')}
        </button>
      </div>
      <RouteRow
        session={props.session}
        portId={props.port}
        label={word('panels.hose.lay')}
        press={word('panels.hose.lay')}
        onLay={(through) =>
          props.session.send({ do: 'route', hose: props.hose.id, route: through.join(',') })
        }
      />
    </>
  );
}

export function HoseRows(props: {
  readonly session: SessionModel;
  readonly hoseId: string;
  readonly picture: Picture | null;
}): JSX.Element {
  const hose = () => props.session.view().hoses.find((one) => one.id === props.hoseId);
  const gauge = (): string | undefined => GAUGE_OF[props.hoseId];
  const adapted = (): boolean => props.session.signal(`hose.${props.hoseId}.adapter`) === 1;
  const purges = (): boolean => props.hoseId === 'charging' || props.hoseId === 'utility';
  return (
    <Show when={hose()}>
      {(one) => (
        <fieldset class="fs stack">
          <legend>{hoseName(props.hoseId)}</legend>
          <Show when={props.hoseId !== 'utility'}>
            <div class="row">
              <Show when={one().port === null}>
                <CloseUp session={props.session} id={props.hoseId} picture={props.picture} small />
              </Show>
              <Lying session={props.session} hose={one()} />
            </div>
            <Show when={one().port} fallback={<ConnectRows session={props.session} hose={one()} />}>
              {(port) => <CoupledRows session={props.session} hose={one()} port={port()} />}
            </Show>
          </Show>
          <div class="row wrap">
            <Show when={props.session.facts.tools.includes('loose-adapter') && props.hoseId !== 'utility'}>
              <button
                type="button"
                class="btn sm"
                onClick={() =>
                  props.session.send({ do: 'adapter', hose: props.hoseId, to: adapted() ? 'off' : 'on' })
                }
              >
                {adapted() ? word('task.adapter.off') : word('task.adapter.on')}
              </button>
            </Show>
            <Show when={gauge()}>
              {(id) => (
                <button
                  type="button"
                  class="btn sm"
                  onClick={() => props.session.send({ do: 'zero', gauge: id() })}
                >
                  {word('panels.hose.zero')}
                </button>
              )}
            </Show>
            <Show when={purges()}>
              <PurgeButtons session={props.session} hoseId={props.hoseId} />
            </Show>
          </div>
        </fieldset>
      )}
    </Show>
  );
}
