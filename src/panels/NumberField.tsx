/** A whole number that is typed, held between its ends. */
import type { JSX } from 'solid-js';

export function NumberField(props: {
  readonly label: string;
  readonly value: number;
  readonly most: number;
  readonly step?: number;
  readonly onSet: (value: number) => void;
}): JSX.Element {
  const step = (): number => props.step ?? 1;
  const set = (input: HTMLInputElement): void => {
    const rounded = Math.round((Number(input.value) || 0) / step()) * step();
    const held = Math.max(0, Math.min(props.most, rounded));
    input.value = String(held);
    props.onSet(held);
  };
  return (
    <label class="field">
      <span>{props.label}</span>
      <input
        type="number"
        inputmode="numeric"
        min={0}
        max={props.most}
        step={step()}
        value={props.value}
        onChange={(event) => set(event.currentTarget)}
      />
    </label>
  );
}
