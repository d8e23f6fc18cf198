/** Waiting: ring and square outlined, what is being done, why it is done once. */
import { type JSX, Show } from 'solid-js';

export function Loading(props: { readonly title: string; readonly note?: string }): JSX.Element {
  return (
    <main class="loading" role="status" id="main">
      <svg width="62" height="34" viewBox="0 0 40 22" class="mk" aria-hidden="true">
        <circle cx="11" cy="11" r="8.5" />
        <rect x="21.5" y="2.5" width="17" height="17" rx="3.5" />
      </svg>
      <h1>{props.title}</h1>
      <Show when={props.note}>
        <p class="s mut">{props.note}</p>
      </Show>
    </main>
  );
}
