/** A can in words: where it stands, what it is screwed on to, valve in sixteenths, tilt in steps of five degrees. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import type { CanView } from '../session/corePort';
import { word } from '../words/words';
import { Segmented, Stepped } from './controls';
import { Fold } from './Fold';
import { NumberField } from './NumberField';
import { PurgeButtons } from './PurgeButtons';
import type { SessionModel } from './sessionModel';
import { valveStands } from './valveStands';

const VALVE_END = 16;
const INVERTED_DEG = 180;
const TILT_STEP_DEG = 5;
const MOST_LEFT_G = 1000;

const inletName = (inlet: string): string =>
  inlet === 'charging' ? word('panels.can.charging') : word('panels.can.utility');

function Mounting(props: { readonly session: SessionModel; readonly can: CanView }): JSX.Element {
  return (
    <Show
      when={props.can.onto === null}
      fallback={
        <div class="row wrap">
          <button
            type="button"
            class="btn sm"
            onClick={() => props.session.send({ do: 'untap', can: props.can.id })}
          >
            {word('panels.can.untap')}
          </button>
          <PurgeButtons session={props.session} hoseId={props.can.onto ?? ''} />
        </div>
      }
    >
      <div class="stack">
        <span class="s">{word('panels.can.onto')}</span>
        <div class="row wrap">
          <For each={props.session.choices('can-inlet')}>
            {(inlet) => (
              <button
                type="button"
                class="btn sm"
                onClick={() => props.session.send({ do: 'tap', can: props.can.id, onto: inlet })}
              >
                {inletName(inlet)}
              </button>
            )}
          </For>
        </div>
      </div>
    </Show>
  );
}

/** Keys of a held can: [ and ] tilt, Home and End upright and inverted, + and - turn the valve. */
function canKey(session: SessionModel, can: CanView, event: KeyboardEvent): boolean {
  const tilt = (degrees: number): void =>
    session.send({ do: 'tilt', can: can.id, degrees: Math.max(0, Math.min(INVERTED_DEG, degrees)) });
  const valve = (turn: number): void =>
    session.send({ do: 'can-valve', can: can.id, turn: Math.max(0, Math.min(VALVE_END, turn)) });
  switch (event.key) {
    case '[':
      tilt(can.tiltDeg - TILT_STEP_DEG);
      return true;
    case ']':
      tilt(can.tiltDeg + TILT_STEP_DEG);
      return true;
    case '+':
      valve(can.valveSixteenths + 1);
      return true;
    case '-':
      valve(can.valveSixteenths - 1);
      return true;
    default:
      return false;
  }
}

/** Where a sign is written it is no key. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement && target.type === 'number';

/** A part-used can: marked with what is left in it, then put away. */
function Keeping(props: { readonly session: SessionModel; readonly can: string }): JSX.Element {
  const [grams, setGrams] = createSignal(0);
  const { send } = props.session;
  return (
    <Fold title={word('task.can.keep')}>
      <NumberField
        label={word('task.can.marked')}
        value={grams()}
        most={MOST_LEFT_G}
        step={5}
        onSet={setGrams}
      />
      <div class="row wrap">
        <button
          type="button"
          class="btn sm"
          onClick={() => send({ do: 'mark-can', can: props.can, grams: grams() })}
        >
          {word('task.can.mark')}
        </button>
        <button type="button" class="btn sm" onClick={() => send({ do: 'store-can', can: props.can })}>
          {word('task.can.store')}
        </button>
      </div>
    </Fold>
  );
}

/** What a hand tells of it. */
function heftWord(share: number): string {
  if (share > HALF_TO) return word('panels.look.canFull');
  return share > LITTLE_TO ? word('panels.look.canHalf') : word('panels.look.canLittle');
}

const HALF_TO = 0.6;
const LITTLE_TO = 0.3;

export function CanRows(props: { readonly session: SessionModel; readonly canId: string }): JSX.Element {
  const can = () => props.session.view().cans.find((one) => one.id === props.canId);
  const send = (turn: number): void => props.session.send({ do: 'can-valve', can: props.canId, turn });
  const tilt = (degrees: number): void => props.session.send({ do: 'tilt', can: props.canId, degrees });
  return (
    <Show when={can()}>
      {(one) => (
        <div
          class="stack"
          role="group"
          aria-label={props.session.nameOf(props.canId)}
          onKeyDown={(event) => {
            if (isTyping(event.target)) return;
            if (canKey(props.session, one(), event)) event.preventDefault();
          }}
        >
          <p class="slim-note">{heftWord(props.session.signal(`can.${props.canId}.heftRatio`))}</p>
          <span class="s">{word('panels.can.where')}</span>
          <Segmented
            deed
            label={word('panels.can.where')}
            options={[
              { value: 'hand' as const, label: word('panels.can.hand') },
              { value: 'scale' as const, label: word('panels.can.scale') },
              { value: 'mat' as const, label: word('panels.can.mat') },
              { value: 'bath' as const, label: word('panels.can.bath') },
              { value: 'hot-water' as const, label: word('task.can.hotWater') },
            ]}
            value={one().place}
            onChoose={(at) => props.session.send({ do: 'place', can: props.canId, at })}
          />
          <Mounting session={props.session} can={one()} />
          <span class="s">{word('panels.can.valve')}</span>
          <Stepped
            label={word('panels.can.valve')}
            less={word('panels.can.valveLess')}
            more={word('panels.can.valveMore')}
            min={0}
            max={VALVE_END}
            step={1}
            value={one().valveSixteenths}
            text={valveStands(one().valveSixteenths)}
            onSet={send}
          />
          <span class="s">{word('panels.can.tilt')}</span>
          <Stepped
            label={word('panels.can.tilt')}
            less={word('panels.can.tiltLess')}
            more={word('panels.can.tiltMore')}
            min={0}
            max={INVERTED_DEG}
            step={TILT_STEP_DEG}
            value={one().tiltDeg}
            text={word('panels.can.tiltValue', { degrees: String(one().tiltDeg) })}
            onSet={tilt}
          />
          <div class="row wrap">
            <button type="button" class="btn sm" onClick={() => send(0)}>
              {word('panels.can.valveShut')}
            </button>
            <button type="button" class="btn sm" onClick={() => tilt(0)}>
              {word('panels.can.upright')}
            </button>
            <button type="button" class="btn sm" onClick={() => tilt(INVERTED_DEG)}>
              {word('panels.can.inverted')}
            </button>
            <button
              type="button"
              class="btn sm"
              onClick={() => props.session.send({ do: 'shake', can: props.canId })}
            >
              {word('panels.can.shake')}
            </button>
          </div>
          <Keeping session={props.session} can={props.canId} />
        </div>
      )}
    </Show>
  );
}
