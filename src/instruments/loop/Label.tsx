/** Words in the cutaway: a name, or something smaller beside it. */
import type { JSX } from 'solid-js';

export function Label(props: {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly small?: boolean;
}): JSX.Element {
  return (
    <text x={props.x} y={props.y} class={props.small ? 'l-s' : 'l-t'} text-anchor={props.anchor ?? 'start'}>
      {props.text}
    </text>
  );
}
