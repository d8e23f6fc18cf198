/**
 * A form over the bay: heading, one sentence, fields, foot. It never lies over the readings. Focus goes in when it opens
 * and back to where it was when it closes; Esc closes and writes nothing.
 */
import { type JSX, onCleanup, onMount, Show } from 'solid-js';
import { word } from '../words/words';
import { IconButton } from './controls';

export interface FormProps {
  readonly title: string;
  readonly sub?: string;
  readonly class?: string;
  readonly closeLabel?: string;
  readonly onClose: () => void;
  readonly children: JSX.Element;
  readonly foot?: JSX.Element;
}

export function Form(props: FormProps): JSX.Element {
  let box: HTMLDivElement | undefined;
  const before = document.activeElement;
  onMount(() => box?.focus());
  onCleanup(() => {
    if (before instanceof HTMLElement && before.isConnected) before.focus();
  });
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    props.onClose();
  };
  return (
    <div
      class={`ov form ${props.class ?? ''}`}
      role="dialog"
      aria-label={props.title}
      tabIndex={-1}
      ref={box}
      onKeyDown={onKeyDown}
    >
      <div class="fh">
        <div>
          <h2>{props.title}</h2>
          <Show when={props.sub}>
            <p class="s mut">{props.sub}</p>
          </Show>
        </div>
        <IconButton
          icon="cross"
          label={props.closeLabel ?? word('app.closeNothingWritten')}
          onPress={() => props.onClose()}
        />
      </div>
      <div class="fb">{props.children}</div>
      <Show when={props.foot}>
        <div class="ff">{props.foot}</div>
      </Show>
    </div>
  );
}
