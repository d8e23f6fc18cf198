/** Looking for a leak: detector, soap, lamp and dye. The place is chosen once for all of them; a press is one command. */
import { createSignal, For, type JSX, Match, Show, Switch } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import { CloseUp, type Picture } from './CloseUp';
import { Segmented, Stepped } from './controls';
import type { SessionModel } from './sessionModel';

interface Rows {
  readonly session: SessionModel;
}

const PACE = { least: 5, most: 150, step: 5, first: 25 } as const;
const GAP = { least: 1, most: 30, step: 1, first: 5 } as const;
const DYE_ML = { least: 5, most: 30, step: 5 } as const;

/** Kept while the screen stands: whoever follows a tick with soap does so at the same place. */
const [chosen, setChosen] = createSignal<string | null>(null);

const LEVELS = {
  detector: ['detector.ticks', 'twin.search.ticks'],
  soap: ['soap.bubbles', 'twin.search.bubbles'],
  'uv-lamp': ['lamp.glow', 'twin.search.glow'],
} as const;

function Place(props: Rows): JSX.Element {
  return (
    <label class="field s">
      <span>{word('panels.search.place')}</span>
      <select onChange={(event) => setChosen(event.currentTarget.value)}>
        <For each={props.session.choices('leak-place')}>
          {(id) => (
            <option value={id} selected={id === placeOf(props.session)}>
              {props.session.nameOf(id)}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}

function placeOf(session: SessionModel): string {
  const places = session.choices('leak-place');
  const kept = chosen();
  return kept !== null && places.includes(kept) ? kept : places[0];
}

/** Begun and ended, as it is told. The lamp shows at once. */
const BEGUN: readonly string[] = ['sniff-begun', 'soap-put-on'];
const TOLD = {
  detector: ['sniff-begun', 'sniffed'],
  soap: ['soap-put-on', 'soaped'],
  'uv-lamp': ['lamp-shone'],
} as const satisfies Readonly<Record<keyof typeof LEVELS, readonly string[]>>;

/** What it did last, where, and what came of it. */
function lastWords(session: SessionModel, tool: keyof typeof LEVELS): string {
  const [signal, found] = LEVELS[tool];
  const told: readonly string[] = TOLD[tool];
  const last = session.view().happened.find(({ id }) => told.includes(id));
  const level = session.signal(signal);
  const what = level > 0 ? word(found, { level: plainNumber(level) }) : null;
  if (last?.subject === undefined) return what ?? word('panels.search.idle');
  const place = session.nameOf(last.subject);
  if (BEGUN.includes(last.id))
    return tool === 'soap'
      ? word('panels.search.soaking', { place })
      : word('panels.search.sweeping', { place });
  return what ? word('panels.search.found', { what, place }) : word('panels.search.nothing', { place });
}

function Level(props: Rows & { readonly tool: keyof typeof LEVELS }): JSX.Element {
  return <p class="slim-note">{lastWords(props.session, props.tool)}</p>;
}

function Detector(props: Rows): JSX.Element {
  const [from, setFrom] = createSignal<'below' | 'above'>('below');
  const [pace, setPace] = createSignal<number>(PACE.first);
  const [gap, setGap] = createSignal<number>(GAP.first);
  const lead = (): void =>
    props.session.send({
      do: 'sniff',
      at: placeOf(props.session),
      from: from(),
      paceMmPerS: pace(),
      gapMm: gap(),
    });
  return (
    <>
      <Segmented
        label={word('panels.search.from')}
        options={[
          { value: 'below' as const, label: word('panels.search.below') },
          { value: 'above' as const, label: word('panels.search.above') },
        ]}
        value={from()}
        onChoose={setFrom}
      />
      <span class="s">{word('panels.search.pace')}</span>
      <Stepped
        label={word('panels.search.pace')}
        less={word('panels.search.slower')}
        more={word('panels.search.faster')}
        min={PACE.least}
        max={PACE.most}
        step={PACE.step}
        value={pace()}
        text={word('panels.search.paceValue', { pace: plainNumber(pace()) })}
        onSet={setPace}
      />
      <span class="s">{word('panels.search.gap')}</span>
      <Stepped
        label={word('panels.search.gap')}
        less={word('panels.search.nearer')}
        more={word('panels.search.farther')}
        min={GAP.least}
        max={GAP.most}
        step={GAP.step}
        value={gap()}
        text={word('panels.search.gapValue', { gap: plainNumber(gap()) })}
        onSet={setGap}
      />
      <button type="button" class="btn" onClick={lead}>
        {word('panels.search.lead')}
      </button>
      <Level session={props.session} tool="detector" />
    </>
  );
}

function Dye(props: Rows): JSX.Element {
  const [mL, setML] = createSignal<number>(DYE_ML.least);
  return (
    <>
      <Stepped
        label={word('panels.search.dye')}
        less={word('panels.service.less')}
        more={word('panels.service.more')}
        min={DYE_ML.least}
        max={DYE_ML.most}
        step={DYE_ML.step}
        value={mL()}
        text={word('panels.service.millilitres', { mL: plainNumber(mL()) })}
        onSet={setML}
      />
      <button type="button" class="btn" onClick={() => props.session.send({ do: 'inject-dye', mL: mL() })}>
        {word('panels.search.injectDye', { mL: plainNumber(mL()) })}
      </button>
    </>
  );
}

export function SearchRows(
  props: Rows & { readonly tool: string; readonly picture: Picture | null },
): JSX.Element {
  const { session } = props;
  return (
    <div class="stack">
      <Show when={props.tool !== 'dye'}>
        <Place session={session} />
        <CloseUp session={session} id={placeOf(session)} picture={props.picture} />
      </Show>
      <Switch>
        <Match when={props.tool === 'detector'}>
          <Detector session={session} />
        </Match>
        <Match when={props.tool === 'soap'}>
          <button
            type="button"
            class="btn"
            onClick={() => session.send({ do: 'soap', at: placeOf(session) })}
          >
            {word('panels.search.putSoap')}
          </button>
          <Level session={session} tool="soap" />
        </Match>
        <Match when={props.tool === 'uv-lamp'}>
          <button
            type="button"
            class="btn"
            onClick={() => session.send({ do: 'lamp', at: placeOf(session) })}
          >
            {word('panels.search.shine')}
          </button>
          <Level session={session} tool="uv-lamp" />
        </Match>
        <Match when={props.tool === 'dye'}>
          <Dye session={session} />
        </Match>
      </Switch>
    </div>
  );
}
