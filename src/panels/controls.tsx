/** Small controls that several panels share: side badge, segmented choice, icon button, stepped value. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { Icon, type IconName } from './Icon';

export function SideBadge(props: { readonly side: 'low' | 'high' | 'charging' }): JSX.Element {
  return (
    <i class={`bdg ${props.side}`} aria-hidden="true">
      {{ low: 'L', high: 'H', charging: 'C' }[props.side]}
    </i>
  );
}

export interface Option<T> {
  readonly value: T;
  readonly label: string;
  readonly icon?: IconName;
}

/**
 * One of a few. Arrow keys move and choose, as in any radio group; where choosing is a deed in the bay they only move, and
 * Enter or Space does it: the way to the third must not lead through doing the second.
 */
export function Segmented<T extends string | number>(props: {
  readonly label: string;
  readonly options: readonly Option<T>[];
  readonly value: T | null;
  readonly deed?: boolean;
  readonly onChoose: (value: T) => void;
}): JSX.Element {
  const buttons: HTMLButtonElement[] = [];
  /** Where focus is, while it is in the group. */
  const [at, setAt] = createSignal<number | null>(null);
  const chosen = (): number => props.options.findIndex((option) => option.value === props.value);
  const stop = (): number => at() ?? Math.max(0, chosen());
  const move = (event: KeyboardEvent, index: number): void => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const next = (index + step + props.options.length) % props.options.length;
    buttons[next]?.focus();
    if (!props.deed) props.onChoose(props.options[next].value);
  };
  return (
    <div class="seg" role="radiogroup" aria-label={props.label}>
      <For each={props.options}>
        {(option, index) => (
          <button
            type="button"
            role="radio"
            ref={(element) => {
              buttons[index()] = element;
            }}
            aria-label={option.icon ? option.label : undefined}
            aria-checked={option.value === props.value}
            tabIndex={index() === stop() ? 0 : -1}
            classList={{ on: option.value === props.value }}
            onFocus={() => setAt(index())}
            onBlur={() => setAt(null)}
            onClick={() => props.onChoose(option.value)}
            onKeyDown={(event) => move(event, index())}
          >
            <Show when={option.icon}>{(name) => <Icon name={name()} size={14} />}</Show>
            <span>{option.label}</span>
          </button>
        )}
      </For>
    </div>
  );
}

export function IconButton(props: {
  readonly icon: IconName;
  readonly label: string;
  readonly onPress: () => void;
  readonly class?: string;
}): JSX.Element {
  return (
    <button
      type="button"
      class={`icb ${props.class ?? ''}`}
      aria-label={props.label}
      onClick={() => props.onPress()}
    >
      <Icon name={props.icon} />
    </button>
  );
}

/** A value that moves in steps: a slider with a button at either side. */
export function Stepped(props: {
  readonly label: string;
  readonly less: string;
  readonly more: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly text: string;
  readonly onSet: (value: number) => void;
}): JSX.Element {
  const set = (value: number): void => props.onSet(Math.max(props.min, Math.min(props.max, value)));
  return (
    <div class="step-field" role="group" aria-label={props.label}>
      <button
        type="button"
        class="btn sm"
        aria-label={props.less}
        onClick={() => set(props.value - props.step)}
      >
        <Icon name="minus" size={16} />
      </button>
      <input
        type="range"
        aria-label={props.label}
        aria-valuetext={props.text}
        min={props.min}
        max={props.max}
        step={props.step}
        value={props.value}
        onChange={(event) => set(Number(event.currentTarget.value))}
      />
      <button
        type="button"
        class="btn sm"
        aria-label={props.more}
        onClick={() => set(props.value + props.step)}
      >
        <Icon name="plus" size={16} />
      </button>
      <output>{props.text}</output>
    </div>
  );
}
