/** Things a person can do that the car was built to prevent, and what makes a high-voltage part safe to touch. */
import { For, type JSX } from 'solid-js';
import { word } from '../words/words';
import { Segmented } from './controls';
import type { SessionModel } from './sessionModel';

type Limit = 'low-switch' | 'high-switch' | 'tank-limit';

const limitName = (what: Limit): string =>
  what === 'tank-limit'
    ? word('task.bridge.tank-limit')
    : what === 'low-switch'
      ? word('task.bridge.low-switch')
      : word('task.bridge.high-switch');

/** A switch as built, or with its plug bridged. */
export function BridgeRows(props: {
  readonly session: SessionModel;
  readonly of: readonly Limit[];
}): JSX.Element {
  const isOn = (what: Limit): boolean => props.session.signal(`bypass.${what}`) === 1;
  return (
    <For each={props.of}>
      {(what) => (
        <div class="stack">
          <span class="s">{limitName(what)}</span>
          <Segmented
            deed
            label={limitName(what)}
            options={[
              { value: 'off' as const, label: word('task.bridge.works') },
              { value: 'on' as const, label: word('task.bridge.bridged') },
            ]}
            value={isOn(what) ? 'on' : 'off'}
            onChoose={(to) => props.session.send({ do: 'bypass', what, to })}
          />
        </div>
      )}
    </For>
  );
}

export function IsolateButton(props: { readonly session: SessionModel }): JSX.Element {
  const isOff = (): boolean => props.session.signal('highVoltage.isolated') === 1;
  return (
    <button
      type="button"
      class="btn sm"
      onClick={() => props.session.send({ do: 'isolate', to: isOff() ? 'off' : 'on' })}
    >
      {isOff() ? word('task.isolate.on') : word('task.isolate.off')}
    </button>
  );
}
