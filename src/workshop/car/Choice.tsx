/** One of a few, as a radio group: arrow keys move and choose. */
import { For, type JSX } from 'solid-js';

export function Choice<Value extends string>(props: {
  readonly label: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value;
  readonly onChoose: (value: Value) => void;
}): JSX.Element {
  const buttons: HTMLButtonElement[] = [];
  const move = (event: KeyboardEvent, index: number): void => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const next = (index + step + props.options.length) % props.options.length;
    buttons[next]?.focus();
    props.onChoose(props.options[next].value);
  };
  return (
    <div class="seg sm" role="radiogroup" aria-label={props.label}>
      <For each={props.options}>
        {(option, index) => (
          <button
            type="button"
            role="radio"
            ref={(element) => {
              buttons[index()] = element;
            }}
            aria-checked={option.value === props.value}
            tabIndex={option.value === props.value ? 0 : -1}
            classList={{ on: option.value === props.value }}
            onClick={() => props.onChoose(option.value)}
            onKeyDown={(event) => move(event, index())}
          >
            <span>{option.label}</span>
          </button>
        )}
      </For>
    </div>
  );
}
