/** Fields of the forms beside a page to print: a line of text, one of a few. */
import { For, type JSX } from 'solid-js';

export function Typed(props: {
  readonly name: string;
  readonly value: string;
  readonly onType: (text: string) => void;
}): JSX.Element {
  return (
    <label class="field">
      <span>{props.name}</span>
      <input
        type="text"
        autocomplete="off"
        value={props.value}
        onInput={(event) => props.onType(event.currentTarget.value)}
      />
    </label>
  );
}

export function Choice(props: {
  readonly name: string;
  readonly options: readonly (readonly [value: string, name: string])[];
  readonly value: string;
  readonly onChoose: (value: string) => void;
}): JSX.Element {
  return (
    <label class="field">
      <span>{props.name}</span>
      <select onChange={(event) => props.onChoose(event.currentTarget.value)}>
        <For each={props.options}>
          {([value, name]) => (
            <option value={value} selected={value === props.value}>
              {name}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
