/**
 * Job clock: time since arrival, held or a lapse, and run on. Space holds and lets go, arrows change the speed, R opens run on. Where
 * there is no room for a row of speeds, one button shows the speed and opens them as a menu.
 */
import { createSignal, type JSX, Match, Show, Switch, untrack } from 'solid-js';
import { writeClock } from '../instruments/displayUnits';
import { type WordId, word } from '../words/words';
import { type ClockChoice, ClockMenu } from './ClockMenu';
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
  const [open, setOpen] = createSignal<'speed' | 'runOn' | null>(null);
  let speedOpener: HTMLButtonElement | undefined;
  let runOnOpener: HTMLButtonElement | undefined;
  const clock = () => props.session.clock();
  /** How fast it ran when a hand held it. */
  let heldFrom: Lapse = 1;
  const choose = (lapse: Lapse): void => {
    if (lapse !== 0) heldFrom = 1;
    else if (clock().lapse !== 0) heldFrom = clock().lapse;
    props.session.setLapse(lapse);
  };
  const runOn = (how: RunOn): void => {
    heldFrom = 1;
    props.session.runOn(how);
  };
  const press = (menu: 'speed' | 'runOn'): void => {
    setOpen(open() === menu ? null : menu);
  };
  const close = (): void => {
    const opener = open() === 'speed' ? speedOpener : runOnOpener;
    setOpen(null);
    opener?.focus();
  };
  const then = (act: () => void) => (): void => {
    close();
    act();
  };
  const speeds = (): ClockChoice[] =>
    untrack(() =>
      LAPSES.map((lapse) => ({
        label: lapseLabel(lapse),
        chosen: lapse === clock().lapse,
        choose: then(() => choose(lapse)),
      })),
    );
  const runOns = (): ClockChoice[] =>
    RUN_ONS.map((option) => ({
      label: word(option.label as 'work.clock.run10s'),
      note: word(option.for as 'work.clock.run10sFor'),
      choose: then(() => runOn(option.how)),
    }));
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key.toLowerCase() === 'r' && !event.ctrlKey && !event.metaKey) setOpen('runOn');
    else if (event.key === ' ' && isSpeed(event.target)) choose(clock().lapse === 0 ? heldFrom : 0);
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
      <span class="hide-s">
        <Segmented
          label={word('work.clock.speed')}
          options={LAPSES.map((lapse) => ({
            value: lapse,
            label: lapseLabel(lapse),
            ...(lapse === 0 ? { icon: 'pause' as const } : {}),
          }))}
          value={clock().lapse}
          onChoose={choose}
        />
      </span>
      <button
        type="button"
        class="btn sm spd only-s"
        classList={{ on: open() === 'speed' }}
        ref={speedOpener}
        aria-haspopup="menu"
        aria-expanded={open() === 'speed'}
        aria-label={word('work.clock.speedNow', { speed: lapseLabel(clock().lapse) })}
        onClick={() => press('speed')}
      >
        <Show when={clock().lapse === 0} fallback={<span>{lapseLabel(clock().lapse)}</span>}>
          <Icon name="pause" size={16} />
        </Show>
      </button>
      <button
        type="button"
        class="btn sm ro"
        classList={{ on: open() === 'runOn' }}
        ref={runOnOpener}
        aria-haspopup="menu"
        aria-expanded={open() === 'runOn'}
        aria-label={word('work.clock.runOn')}
        onClick={() => press('runOn')}
      >
        <Icon name="runon" size={16} />
        <span>{word('work.clock.runOn')}</span>
      </button>
      <Switch>
        <Match when={open() === 'speed'}>
          <ClockMenu
            title={word('work.clock.speed')}
            label={word('work.clock.speed')}
            choices={speeds()}
            onClose={close}
          />
        </Match>
        <Match when={open() === 'runOn'}>
          <ClockMenu
            title={word('work.clock.runOnTitle')}
            label={word('work.clock.runOn')}
            choices={runOns()}
            onClose={close}
          />
        </Match>
      </Switch>
    </div>
  );
}
