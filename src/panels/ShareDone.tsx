/** How much of something is done, as a bar. */
import type { JSX } from 'solid-js';

export function ShareDone(props: { readonly label: string; readonly share: number }): JSX.Element {
  return <progress class="share" aria-label={props.label} max="1" value={props.share} />;
}
