/** A part of a form that is folded away until it is wanted. Folds of one name open one at a time. */
import type { JSX } from 'solid-js';

export function Fold(props: {
  readonly title: string;
  readonly name?: string;
  readonly open?: boolean;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <details class="tuck" name={props.name} open={props.open}>
      <summary>
        <span>{props.title}</span>
      </summary>
      <div class="stack">{props.children}</div>
    </details>
  );
}
