/** Sentences, in a box as tall as they are, up to some lines; then it scrolls. */
import { createEffect, type JSX, on, onCleanup, onMount } from 'solid-js';

export function TextBox(props: {
  readonly label: string;
  readonly value: string;
  readonly most: number;
  /** Whether it was written; else the box goes back to what the text says. */
  readonly onSet: (value: string) => Promise<boolean>;
}): JSX.Element {
  let area: HTMLTextAreaElement | undefined;
  const fit = (): void => {
    if (!area) return;
    area.style.height = 'auto';
    const borders = area.offsetHeight - area.clientHeight;
    if (area.scrollHeight > 0) area.style.height = `${area.scrollHeight + borders}px`;
  };
  const set = async (): Promise<void> => {
    if (area && !(await props.onSet(area.value))) {
      area.value = props.value;
      fit();
    }
  };
  onMount(() => {
    if (!area) return;
    let width = 0;
    const watching = new ResizeObserver(([{ contentRect }]) => {
      if (contentRect.width !== width) fit();
      width = contentRect.width;
    });
    watching.observe(area);
    onCleanup(() => watching.disconnect());
  });
  createEffect(on(() => props.value, fit));
  return (
    <label class="ws-f says">
      <span>{props.label}</span>
      <textarea
        ref={area}
        rows={1}
        maxLength={props.most}
        value={props.value}
        onInput={fit}
        onChange={() => void set()}
      />
    </label>
  );
}
