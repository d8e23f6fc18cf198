/**
 * The trace in words, which is also the way without the drawing: where one is, what it joins as buttons, what lies under
 * a panel, and what was followed so far.
 */
import { For, type JSX, Show } from 'solid-js';
import type { DrillBay } from '../../layout/drill/drill';
import { coverOver, joins } from '../../layout/drill/joins';
import { word } from '../../words/words';
import { otherEnds, thingName } from './drillWords';

export interface DrillTraceProps {
  readonly bay: DrillBay;
  readonly traced: readonly string[];
  readonly lifted: readonly string[];
  readonly isBroken: boolean;
  readonly onFollow: (id: string) => void;
  readonly onClear: () => void;
}

const DECIDES: ReadonlySet<string> = new Set(['compressor', 'valve', 'orifice']);

interface Next {
  /** What a press asks for: the thing, or the panel over it. */
  readonly id: string;
  readonly name: string;
}

export function DrillTracePanel(props: DrillTraceProps): JSX.Element {
  const here = (): string | undefined => props.traced[props.traced.length - 1];
  const next = (): readonly Next[] => {
    const at = here();
    const ids = at === undefined ? props.bay.ports.map(({ id }) => id) : joins(props.bay, at);
    const made = ids.map((id): Next => {
      const cover = coverOver(props.bay, id, props.lifted);
      return cover === null
        ? { id, name: thingName(props.bay, id) }
        : { id: cover, name: word('drill.trace.lift') };
    });
    return made.filter(({ id }, i) => made.findIndex((one) => one.id === id) === i);
  };
  const isEnd = (): boolean => DECIDES.has(props.bay.loopParts[here() ?? ''] ?? '');
  const other = (): string | null => otherEnds(props.bay, here() ?? '');
  return (
    <section class="dtrace" aria-label={word('drill.trace.title')}>
      <div class="row">
        <h2>{word('drill.trace.title')}</h2>
        <span class="sp" />
        <Show when={here() !== undefined}>
          <button type="button" class="btn sm qt" onClick={() => props.onClear()}>
            {word('drill.trace.clear')}
          </button>
        </Show>
      </div>
      <div role="status" class="s">
        <Show when={props.isBroken}>
          <p class="mut">{word('drill.trace.broken')}</p>
        </Show>
        <p>
          {here() === undefined
            ? word('drill.trace.start')
            : word('drill.trace.here', { name: thingName(props.bay, here() ?? '') })}
        </p>
        <Show when={other()}>{(ends) => <p>{word('drill.trace.other', { ends: ends() })}</p>}</Show>
        <Show when={isEnd()}>
          <p>
            <b>{word('drill.trace.decides')}</b> {word('drill.trace.thicker')}
          </p>
        </Show>
      </div>
      <Show when={next().length > 0}>
        <fieldset class="dnext">
          <legend class="xs mut">
            {here() === undefined ? word('drill.trace.ports') : word('drill.trace.joins')}
          </legend>
          <For each={next()}>
            {({ id, name }) => (
              <button
                type="button"
                class="btn sm"
                classList={{ cur: props.traced.includes(id) }}
                onClick={() => props.onFollow(id)}
              >
                {name}
              </button>
            )}
          </For>
        </fieldset>
      </Show>
      <Show when={props.traced.length > 1}>
        <details class="dsteps">
          <summary class="xs">{word('drill.trace.steps')}</summary>
          <ol class="s">
            <For each={props.traced}>{(id) => <li>{thingName(props.bay, id)}</li>}</For>
          </ol>
        </details>
      </Show>
    </section>
  );
}
