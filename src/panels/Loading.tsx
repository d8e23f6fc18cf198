/** Waiting: ring and square outlined, what is being done, why it is done once, how much of it is done. */
import { type JSX, Show } from 'solid-js';
import { ShareDone } from './ShareDone';

export function Loading(props: {
  readonly title: string;
  readonly note?: string;
  /** 0 to 1, where it can be told. */
  readonly share?: number;
}): JSX.Element {
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
      <Show when={props.share !== undefined}>
        <ShareDone label={props.title} share={props.share ?? 0} />
      </Show>
    </main>
  );
}
