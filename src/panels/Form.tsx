/**
 * A form over the bay: heading, one sentence, fields, foot. It never lies over the readings. Focus goes in when it opens
 * and back to where it was when it closes; Esc closes and writes nothing. What came of a press is said in the form.
 */
import { createContext, createEffect, type JSX, onCleanup, onMount, Show, useContext } from 'solid-js';
import { word } from '../words/words';
import { IconButton } from './controls';
import { giveFocusBack, keepFocusWithin } from './focusKeeping';
import { Icon } from './Icon';
import type { Notice } from './sessionModel';

/** What came of the last act. A form says it itself: the status plate of the bay lies behind it. */
export const Outcome = createContext<() => Notice | null>(() => null);

/** Outside the form, and in nothing that lies over it. */
const liesUnder = (target: EventTarget | null, box: HTMLElement | undefined): boolean =>
  target instanceof Element && !box?.contains(target) && target.closest('[role$="dialog"], .pop') === null;

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
  const latest = useContext(Outcome);
  const old = latest()?.serial;
  /** Only what came of something done in this form, and what the clock did as it opened. */
  const outcome = (): Notice | null => {
    const line = latest();
    return line?.serial === old && line?.icon !== 'clock' ? null : line;
  };
  onMount(() => {
    if (!box) return;
    if (!box.contains(document.activeElement)) box.focus();
    onCleanup(keepFocusWithin(box));
  });
  onCleanup(() => giveFocusBack(before));
  let strip: HTMLDivElement | undefined;
  // Its room stays when it has gone: what is pressed would move under the finger.
  createEffect(() => {
    if (outcome() && strip) strip.style.minHeight = `${strip.getBoundingClientRect().height}px`;
  });
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    props.onClose();
  };
  /** Focus may have gone on to something the form lies over; Esc uncovers it. */
  const onPageKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && !event.defaultPrevented && liesUnder(event.target, box)) props.onClose();
  };
  document.addEventListener('keydown', onPageKey);
  onCleanup(() => document.removeEventListener('keydown', onPageKey));
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
      <div role="status" class="form-outcome" ref={strip}>
        <Show when={outcome()}>
          {(line) => (
            <p class="slim-note">
              <Icon name={line().icon} size={16} />
              <span>{line().text}</span>
            </p>
          )}
        </Show>
      </div>
      <Show when={props.foot}>
        <div class="ff">{props.foot}</div>
      </Show>
    </div>
  );
}
