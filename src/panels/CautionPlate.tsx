/** A caution before a hazardous act: hazard, reason, what to do; the safe act stands first and has the focus. Esc is safe. */
import { type JSX, onCleanup, onMount } from 'solid-js';
import { type WordId, word } from '../words/words';
import type { CautionId } from './cautions';
import { giveFocusBack, keepTabInside } from './focusKeeping';

export function WarningSign(): JSX.Element {
  return (
    <svg width="34" height="32" viewBox="0 0 34 32" aria-hidden="true">
      <path d="M17 2L32.5 29.5H1.5z" fill="#1A1400" />
      <path d="M17 11v9M17 24v1.5" stroke="#FFC72E" stroke-width="3.2" stroke-linecap="round" />
    </svg>
  );
}

type Piece = 'title' | 'text' | 'safe' | 'go';
const piece = (id: CautionId, name: Piece): string =>
  word(`caution.${id}.${name}` as WordId as 'caution.goggles.title');

export function CautionPlate(props: {
  readonly id: CautionId;
  readonly onSafe: () => void;
  readonly onGo: () => void;
}): JSX.Element {
  let safe: HTMLButtonElement | undefined;
  let box: HTMLDivElement | undefined;
  const before = document.activeElement;
  onMount(() => safe?.focus());
  onCleanup(() => giveFocusBack(before));
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'F6') event.preventDefault();
    event.stopPropagation();
    if (event.key === 'Escape') props.onSafe();
    else if (box) keepTabInside(event, box);
  };
  return (
    <div
      class="ov cau"
      role="alertdialog"
      aria-modal="true"
      ref={box}
      aria-labelledby="caution-title"
      aria-describedby="caution-text"
      on:keydown={onKeyDown}
    >
      <div class="caution">
        <i class="hz" />
        <span class="sym">
          <WarningSign />
        </span>
        <div class="bd">
          <h3 id="caution-title">{piece(props.id, 'title')}</h3>
          <p id="caution-text">{piece(props.id, 'text')}</p>
          <div class="acts">
            <button type="button" class="btn ink sm" ref={safe} onClick={() => props.onSafe()}>
              {piece(props.id, 'safe')}
            </button>
            <button type="button" class="btn sm" onClick={() => props.onGo()}>
              {piece(props.id, 'go')}
            </button>
          </div>
        </div>
      </div>
    </div>
  );
}
