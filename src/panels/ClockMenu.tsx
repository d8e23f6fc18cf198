/** A short menu under the clock: arrows move, Esc or a press outside closes. What is chosen now is marked and has focus. */
import { For, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { word } from '../words/words';

export interface ClockChoice {
  readonly label: string;
  readonly note?: string;
  /** Only where the menu is one of a few: whether this one stands. */
  readonly chosen?: boolean;
  readonly choose: () => void;
}

const roleOf = ({ chosen }: ClockChoice): JSX.ButtonHTMLAttributes<HTMLButtonElement> =>
  chosen === undefined ? { role: 'menuitem' } : { role: 'menuitemradio', 'aria-checked': chosen };

export function ClockMenu(props: {
  readonly title: string;
  readonly label: string;
  readonly choices: readonly ClockChoice[];
  readonly onClose: () => void;
}): JSX.Element {
  const items: HTMLButtonElement[] = [];
  let menu: HTMLDivElement | undefined;
  onMount(() => {
    const chosen = props.choices.findIndex((choice) => choice.chosen);
    items[Math.max(0, chosen)]?.focus();
  });
  const outside = (event: PointerEvent): void => {
    const clock = menu?.parentElement;
    if (clock && event.target instanceof Node && !clock.contains(event.target)) props.onClose();
  };
  document.addEventListener('pointerdown', outside);
  onCleanup(() => document.removeEventListener('pointerdown', outside));
  const onKeyDown = (event: KeyboardEvent): void => {
    const at = items.indexOf(document.activeElement as HTMLButtonElement);
    if (event.key === 'Escape') props.onClose();
    else if (event.key === 'ArrowDown') items[(at + 1) % items.length]?.focus();
    else if (event.key === 'ArrowUp') items[(at - 1 + items.length) % items.length]?.focus();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div class="pop" ref={menu} onKeyDown={onKeyDown}>
      <h3>{props.title}</h3>
      <div class="stack" role="menu" aria-label={props.label}>
        <For each={props.choices}>
          {(choice, index) => (
            <button
              type="button"
              {...roleOf(choice)}
              class="ropt"
              classList={{ on: choice.chosen === true }}
              ref={(element) => {
                items[index()] = element;
              }}
              onClick={() => choice.choose()}
            >
              <b>{choice.label}</b>
              <Show when={choice.note}>
                <small>{choice.note}</small>
              </Show>
            </button>
          )}
        </For>
      </div>
      <p class="xs mut">{word('work.clock.note')}</p>
    </div>
  );
}
