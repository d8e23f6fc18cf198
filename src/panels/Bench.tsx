/**
 * The bench: protective gear and tools. A press on gear puts it on or off; a press on a tool takes it in hand, which
 * opens its list in words and lets the bay show where it goes. A tool keeps its button while its state is told anew.
 */
import { Index, type JSX } from 'solid-js';
import { word } from '../words/words';
import { benchTools } from './benchTools';
import { Icon, type IconName } from './Icon';
import type { SessionModel } from './sessionModel';

interface Tag {
  readonly id: string;
  readonly icon: IconName;
  readonly name: string;
  readonly state: string;
  readonly look: 'ready' | 'out' | 'worn';
}

function hoseState(session: SessionModel, ids: readonly string[]): Pick<Tag, 'state' | 'look'> {
  const hoses = session.view().hoses.filter((hose) => ids.includes(hose.id));
  if (hoses.some((hose) => hose.caught)) return { state: word('work.bench.state.caught'), look: 'out' };
  const on = hoses.filter((hose) => hose.port !== null);
  if (on.length === 0) return { state: word('work.bench.state.ready'), look: 'ready' };
  const isOpen = on.some((hose) => hose.couplerOpen);
  return { state: ids.length > 1 ? gaugeSetState(session, isOpen) : hoseOn(isOpen), look: 'out' };
}

const hoseOn = (isOpen: boolean): string =>
  isOpen ? word('work.bench.state.couplerOpen') : word('work.bench.state.couplerShut');

/** Shut couplers come first; behind open ones the hand valves decide. */
function gaugeSetState(session: SessionModel, isOpen: boolean): string {
  if (!isOpen) return word('work.bench.state.couplersShut');
  const valves = [session.signal('manifold.low.sixteenths'), session.signal('manifold.high.sixteenths')];
  return valves.some((turn) => turn > 0)
    ? word('work.bench.state.valveOpen')
    : word('work.bench.state.valvesShut');
}

function tools(session: SessionModel): Tag[] {
  const view = session.view();
  const tags: Tag[] = [];
  const has = (id: string): boolean => view.hoses.some((hose) => hose.id === id);
  if (has('gauge-low'))
    tags.push({
      id: 'gauge-set',
      icon: 'gauges',
      name: word('work.bench.gaugeSet'),
      ...hoseState(session, ['gauge-low', 'gauge-high']),
    });
  if (has('charging'))
    tags.push({
      id: 'charging',
      icon: 'hose',
      name: word('work.bench.charging'),
      ...hoseState(session, ['charging']),
    });
  view.cans.forEach((can, i) => {
    const state = can.onto !== null ? 'tapped' : can.place === 'scale' ? 'onScale' : can.place;
    tags.push({
      id: can.id,
      icon: 'can',
      name: word('work.bench.can', { number: String(i + 1) }),
      state: {
        'hot-water': word('work.bench.state.hot'),
        tapped: word('work.bench.state.tapped'),
        hand: word('work.bench.state.hand'),
        onScale: word('work.bench.state.onScale'),
        bath: word('work.bench.state.bath'),
        mat: word('work.bench.state.ready'),
      }[state],
      look:
        can.onto !== null || can.place === 'scale' || can.place === 'bath' || can.place === 'hot-water'
          ? 'out'
          : 'ready',
    });
  });
  const scaleUsed = view.cans.some((can) => can.place === 'scale');
  const placed = (instrument: string): Pick<Tag, 'state' | 'look'> =>
    session.probeAt(instrument) === null
      ? { state: word('work.bench.state.ready'), look: 'ready' }
      : { state: word('work.bench.state.placed'), look: 'out' };
  tags.push({
    id: 'scale',
    icon: 'scale',
    name: word('work.bench.scale'),
    state: scaleUsed ? word('work.bench.state.inUse') : word('work.bench.state.ready'),
    look: scaleUsed ? 'out' : 'ready',
  });
  tags.push({ id: 'air', icon: 'therm', name: word('work.bench.air'), ...placed('air') });
  tags.push({ id: 'line', icon: 'clamp', name: word('work.bench.line'), ...placed('line') });
  return [...tags, ...benchTools(session)];
}

function gear(session: SessionModel): Tag[] {
  const worn = (item: string): Pick<Tag, 'state' | 'look'> =>
    session.view().worn.includes(item)
      ? { state: word('work.bench.state.worn'), look: 'worn' }
      : { state: word('work.bench.state.off'), look: 'ready' };
  return [
    { id: 'goggles', icon: 'goggles', name: word('work.bench.goggles'), ...worn('goggles') },
    { id: 'gloves', icon: 'glove', name: word('work.bench.gloves'), ...worn('gloves') },
    { id: 'overall', icon: 'overall', name: word('task.gear.overall'), ...worn('overall') },
  ];
}

function ToolTag(props: {
  readonly tag: Tag;
  readonly held: boolean;
  readonly onPress: () => void;
}): JSX.Element {
  return (
    <button
      type="button"
      class={`tool ${props.tag.look}`}
      classList={{ held: props.held }}
      aria-pressed={props.tag.look === 'worn' || props.held}
      onClick={() => props.onPress()}
    >
      <Icon name={props.tag.icon} size={24} />
      <span class="nm">{props.tag.name}</span>
      <span class="st">{props.tag.state}</span>
    </button>
  );
}

export function Bench(props: {
  readonly session: SessionModel;
  readonly held: string | null;
  readonly onTake: (tool: string) => void;
}): JSX.Element {
  const toggle = (item: string): void => {
    const on = props.session.view().worn.includes(item);
    props.session.send({ do: on ? 'take-off' : 'wear', item });
  };
  return (
    <section
      class="bench"
      classList={{ many: props.session.facts.tools.length > 0 }}
      aria-label={word('work.region.bench')}
      data-region
      tabIndex={-1}
    >
      <span class="grp" aria-hidden="true">
        {word('work.bench.onYou')}
      </span>
      <Index each={gear(props.session)}>
        {(tag) => <ToolTag tag={tag()} held={false} onPress={() => toggle(tag().id)} />}
      </Index>
      <span class="grp" aria-hidden="true">
        {word('work.bench.tools')}
      </span>
      <Index each={tools(props.session)}>
        {(tag) => (
          <ToolTag tag={tag()} held={props.held === tag().id} onPress={() => props.onTake(tag().id)} />
        )}
      </Index>
    </section>
  );
}
