/** A few answers side by side, each written down by a press of its own; arrow keys write nothing. */
import { For, type JSX, Show } from 'solid-js';
import { Icon } from './Icon';

export interface Chip {
  readonly value: string;
  readonly label: string;
}

export function ChoiceChips(props: {
  readonly title: string;
  readonly chips: readonly Chip[];
  /** What was written last. */
  readonly value?: string | null;
  readonly onPress: (value: string) => void;
}): JSX.Element {
  return (
    <fieldset class="fs">
      <legend>{props.title}</legend>
      <div class="pick">
        <For each={props.chips}>
          {({ value, label }) => (
            <button
              type="button"
              class="chip"
              classList={{ on: props.value === value }}
              aria-pressed={props.value === value}
              onClick={() => props.onPress(value)}
            >
              <Show when={props.value === value}>
                <Icon name="tick" size={14} />
              </Show>
              {label}
            </button>
          )}
        </For>
      </div>
    </fieldset>
  );
}
