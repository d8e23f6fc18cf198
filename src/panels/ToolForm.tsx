/** What is in hand, as a list in words: everything that can be done with it by pointer, said as buttons. */
import { For, type JSX, Match, Show, Switch } from 'solid-js';
import { word } from '../words/words';
import { benchToolName, benchToolNote } from './benchTools';
import { CanRows } from './CanForm';
import { CloseUp, type Picture } from './CloseUp';
import { Stepped } from './controls';
import { Form } from './Form';
import { formSide } from './formSide';
import { HoseRows } from './HoseForm';
import { SearchRows } from './SearchForm';
import { ServiceRows } from './ServiceForm';
import type { SessionModel } from './sessionModel';
import { valveStands } from './valveStands';

const VALVE_END = 16;
const SEARCH_TOOLS: readonly string[] = ['detector', 'soap', 'uv-lamp', 'dye'];

function HandValve(props: { readonly session: SessionModel; readonly side: 'low' | 'high' }): JSX.Element {
  const turn = (): number => {
    const value = props.session.signal(`manifold.${props.side}.sixteenths`);
    return Number.isNaN(value) ? 0 : value;
  };
  const label = (): string =>
    props.side === 'low' ? word('panels.manifold.low') : word('panels.manifold.high');
  return (
    <div class="stack">
      <span class="s">{label()}</span>
      <Stepped
        label={label()}
        less={`${label()} −`}
        more={`${label()} +`}
        min={0}
        max={VALVE_END}
        step={1}
        value={turn()}
        text={valveStands(turn())}
        onSet={(value) => props.session.send({ do: 'manifold', side: props.side, turn: value })}
      />
    </div>
  );
}

function ProbeRows(props: { readonly session: SessionModel; readonly kind: 'air' | 'line' }): JSX.Element {
  const places = (): readonly string[] =>
    props.session.choices(props.kind === 'air' ? 'air-place' : 'line-place');
  const here = (): string | null => props.session.probeAt(props.kind);
  return (
    <div class="stack">
      <Show when={here()}>
        {(place) => <p class="s mut">{word('panels.probe.at', { place: place() })}</p>}
      </Show>
      <span class="s">{word('panels.probe.put')}</span>
      <div class="pick">
        <For each={places()}>
          {(place) => (
            <button
              type="button"
              class="chip"
              aria-pressed={here() === props.session.nameOf(place)}
              onClick={() =>
                props.session.send({ do: props.kind === 'air' ? 'probe-air' : 'probe-line', at: place })
              }
            >
              {props.session.nameOf(place)}
            </button>
          )}
        </For>
      </div>
    </div>
  );
}

function ScaleRows(props: { readonly session: SessionModel }): JSX.Element {
  return (
    <div class="stack">
      <For each={props.session.view().cans}>
        {(can) => (
          <div class="row wrap">
            <b class="s">{props.session.nameOf(can.id)}</b>
            <span class="sp" />
            <button
              type="button"
              class="btn sm"
              aria-pressed={can.place === 'scale'}
              onClick={() =>
                props.session.send({ do: 'place', can: can.id, at: can.place === 'scale' ? 'mat' : 'scale' })
              }
            >
              {can.place === 'scale' ? word('panels.can.mat') : word('panels.can.scale')}
            </button>
          </div>
        )}
      </For>
    </div>
  );
}

function heading(session: SessionModel, tool: string): readonly [title: string, sub: string] {
  if (tool === 'charging') return [word('panels.tool.charging'), word('panels.tool.chargingSub')];
  if (tool === 'gauge-set') return [word('panels.tool.gaugeSet'), word('panels.tool.gaugeSetSub')];
  if (tool === 'scale') return [word('panels.tool.scale'), word('panels.tool.scaleSub')];
  if (tool === 'air') return [word('panels.tool.air'), word('panels.tool.airSub')];
  if (tool === 'line') return [word('panels.tool.line'), word('panels.tool.lineSub')];
  if (session.facts.tools.includes(tool)) return [benchToolName(tool), benchToolNote(tool)];
  return [session.nameOf(tool), word('panels.tool.canNote')];
}

export function ToolForm(props: {
  readonly session: SessionModel;
  readonly tool: string;
  readonly picture: Picture | null;
  readonly onClose: () => void;
}): JSX.Element {
  const title = () => heading(props.session, props.tool);
  return (
    <Form
      title={title()[0]}
      sub={title()[1]}
      class={formSide(props.tool)}
      closeLabel={word('panels.putDown')}
      onClose={props.onClose}
    >
      <Switch
        fallback={
          <>
            <CloseUp session={props.session} id={props.tool} picture={props.picture} />
            <CanRows session={props.session} canId={props.tool} />
          </>
        }
      >
        <Match when={props.tool === 'charging'}>
          <HoseRows session={props.session} hoseId="charging" picture={props.picture} />
        </Match>
        <Match when={props.tool === 'gauge-set'}>
          <HoseRows session={props.session} hoseId="gauge-low" picture={props.picture} />
          <HoseRows session={props.session} hoseId="gauge-high" picture={props.picture} />
          <HandValve session={props.session} side="low" />
          <HandValve session={props.session} side="high" />
          <HoseRows session={props.session} hoseId="utility" picture={props.picture} />
        </Match>
        <Match when={props.tool === 'scale'}>
          <ScaleRows session={props.session} />
        </Match>
        <Match when={props.tool === 'air' || props.tool === 'line'}>
          <ProbeRows session={props.session} kind={props.tool === 'air' ? 'air' : 'line'} />
        </Match>
        <Match when={SEARCH_TOOLS.includes(props.tool)}>
          <SearchRows session={props.session} tool={props.tool} picture={props.picture} />
        </Match>
        <Match when={props.session.facts.tools.includes(props.tool)}>
          <ServiceRows session={props.session} tool={props.tool} />
        </Match>
      </Switch>
    </Form>
  );
}
