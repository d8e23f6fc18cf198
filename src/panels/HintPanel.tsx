/** Hints in levels: opened ones stay, the next is told with its price. Esc closes, wherever in the bay the focus is. */
import { For, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { figuresFor } from '../instruments/figureWords';
import { word } from '../words/words';
import { IconButton } from './controls';
import { giveFocusBack } from './focusKeeping';
import type { SessionModel } from './sessionModel';

export function HintPanel(props: {
  readonly session: SessionModel;
  readonly onClose: () => void;
}): JSX.Element {
  const hints = () => props.session.view().hints;
  const opened = () => Array.from({ length: hints().opened }, (_, i) => i + 1);
  const levels = () => Array.from({ length: hints().levels }, (_, i) => i + 1);
  let box: HTMLDivElement | undefined;
  const before = document.activeElement;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && !event.defaultPrevented) props.onClose();
  };
  onMount(() => {
    box?.focus();
    document.addEventListener('keydown', onKeyDown);
  });
  onCleanup(() => {
    document.removeEventListener('keydown', onKeyDown);
    giveFocusBack(before);
  });
  return (
    <div class="ov hintp" role="dialog" aria-label={word('panels.hint.title')} tabIndex={-1} ref={box}>
      <div class="row">
        <h2>{word('panels.hint.title')}</h2>
        <span class="hlv" aria-hidden="true">
          <For each={levels()}>{(level) => <i classList={{ y: level <= hints().opened }}>{level}</i>}</For>
        </span>
        <Show when={hints().opened > 0}>
          <span class="s mut">
            {word('panels.hint.level', {
              level: plainNumber(hints().opened),
              levels: plainNumber(hints().levels),
            })}
          </span>
        </Show>
        <span class="sp" />
        <IconButton icon="cross" label={word('app.close')} onPress={() => props.onClose()} />
      </div>
      <ul class="hl">
        <For each={opened()}>
          {(level) => (
            <li classList={{ is: level === hints().opened }}>
              {figuresFor(props.session.facts.hints[level - 1], props.session.units())}
            </li>
          )}
        </For>
      </ul>
      <Show when={hints().opened < hints().levels} fallback={<p class="s mut">{word('panels.hint.none')}</p>}>
        <div class="row wrap">
          <button
            type="button"
            class="btn sm"
            onClick={() => props.session.send({ do: 'hint', level: hints().opened + 1 })}
          >
            {word('panels.hint.next', { level: plainNumber(hints().opened + 1) })}
          </button>
          <span class="s mut">{word('panels.hint.price')}</span>
        </div>
      </Show>
    </div>
  );
}
