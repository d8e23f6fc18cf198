/** Job clock: time since arrival, held or a lapse, and run on. Space holds, arrows change the speed, R opens run on. */
import { createSignal, For, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { writeClock } from '../instruments/displayUnits';
import { type WordId, word } from '../words/words';
import { Segmented } from './controls';
import { Icon } from './Icon';
import type { Lapse, RunOn, SessionModel } from './sessionModel';

const LAPSES: readonly Lapse[] = [0, 1, 10, 60, 240];
const lapseLabel = (lapse: Lapse): string => (lapse === 0 ? word('work.clock.held') : `×${lapse}`);

const RUN_ONS: readonly { readonly how: RunOn; readonly label: WordId; readonly for: WordId }[] = [
  { how: '10s', label: 'work.clock.run10s', for: 'work.clock.run10sFor' },
  { how: '1min', label: 'work.clock.run1min', for: 'work.clock.run1minFor' },
  { how: '5min', label: 'work.clock.run5min', for: 'work.clock.run5minFor' },
  { how: 'notable', label: 'work.clock.runNotable', for: 'work.clock.runNotableFor' },
];

/** A speed of the clock: there Space holds or lets go, whichever speed has the focus. */
const isSpeed = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.getAttribute('role') === 'radio';

export function ClockBar(props: { readonly session: SessionModel }): JSX.Element {
  const [open, setOpen] = createSignal(false);
  let opener: HTMLButtonElement | undefined;
  const clock = () => props.session.clock();
  const close = (): void => {
    setOpen(false);
    opener?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key.toLowerCase() === 'r' && !event.ctrlKey && !event.metaKey) setOpen(true);
    else if (event.key === ' ' && isSpeed(event.target)) props.session.setLapse(clock().lapse === 0 ? 1 : 0);
    else return;
    event.preventDefault();
  };
  return (
    <div
      class="clock"
      role="group"
      aria-label={word('work.clock.label')}
      data-step={clock().step}
      data-running={clock().runningOn ?? ''}
      onKeyDown={onKeyDown}
    >
      <span class="row ct">
        <Icon name="clock" size={18} />
        <span class="time">{writeClock(clock().seconds)}</span>
        <Show when={clock().behind}>
          <span class="xs mut hide-s">{word('work.clock.behind')}</span>
        </Show>
      </span>
      <Segmented
        label={word('work.clock.speed')}
        options={LAPSES.map((lapse) => ({
          value: lapse,
          label: lapseLabel(lapse),
          ...(lapse === 0 ? { icon: 'pause' as const } : {}),
        }))}
        value={clock().lapse}
        onChoose={(lapse) => props.session.setLapse(lapse)}
      />
      <button
        type="button"
        class="btn sm ro"
        classList={{ on: open() }}
        ref={opener}
        aria-haspopup="menu"
        aria-expanded={open()}
        aria-label={word('work.clock.runOn')}
        onClick={() => setOpen(!open())}
      >
        <Icon name="runon" size={16} />
        <span>{word('work.clock.runOn')}</span>
      </button>
      <Show when={open()}>
        <RunOnMenu
          onChoose={(how) => {
            close();
            props.session.runOn(how);
          }}
          onClose={close}
        />
      </Show>
    </div>
  );
}

function RunOnMenu(props: {
  readonly onChoose: (how: RunOn) => void;
  readonly onClose: () => void;
}): JSX.Element {
  const items: HTMLButtonElement[] = [];
  let menu: HTMLDivElement | undefined;
  onMount(() => items[0]?.focus());
  const outside = (event: PointerEvent): void => {
    if (menu && event.target instanceof Node && !menu.contains(event.target)) props.onClose();
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
      <h3>{word('work.clock.runOnTitle')}</h3>
      <div class="stack" role="menu" aria-label={word('work.clock.runOn')}>
        <For each={RUN_ONS}>
          {(option, index) => (
            <button
              type="button"
              role="menuitem"
              class="ropt"
              ref={(element) => {
                items[index()] = element;
              }}
              onClick={() => props.onChoose(option.how)}
            >
              <b>{word(option.label as 'work.clock.run10s')}</b>
              <small>{word(option.for as 'work.clock.run10sFor')}</small>
            </button>
          )}
        </For>
      </div>
      <p class="xs mut">{word('work.clock.note')}</p>
    </div>
  );
}
