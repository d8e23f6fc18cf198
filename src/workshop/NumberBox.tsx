/** A number with its unit beside it, held between its ends; empty where the text does not say one. */
import type { JSX } from 'solid-js';

export function NumberBox(props: {
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** Whether it was written; else the box goes back to what the text says. */
  readonly onSet: (value: number) => Promise<boolean>;
}): JSX.Element {
  const showText = (input: HTMLInputElement): void => {
    input.value = String(props.value ?? '');
  };
  const set = async (input: HTMLInputElement): Promise<void> => {
    const given = Number(input.value);
    if (input.value === '' || !Number.isFinite(given)) {
      showText(input);
      return;
    }
    const held = Math.max(props.least, Math.min(props.most, given));
    input.value = String(held);
    if (held !== props.value && !(await props.onSet(held))) showText(input);
  };
  return (
    <label class="ws-f">
      <span>{props.label}</span>
      <span class="ws-num">
        <input
          type="number"
          inputmode="decimal"
          min={props.least}
          max={props.most}
          step={props.step}
          value={props.value ?? ''}
          onChange={(event) => void set(event.currentTarget)}
        />
        <span>{props.unit}</span>
      </span>
    </label>
  );
}
