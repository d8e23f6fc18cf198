/** What is done at a port besides coupling: a cover over it, a fitting for good, a port put out of use, a test strip. */
import { For, type JSX, Show } from 'solid-js';
import type { PortView } from '../session/corePort';
import { word } from '../words/words';
import { PortSteps } from './conversionRows';
import { portName } from './portWords';
import type { SessionModel } from './sessionModel';

/** Some ports lie under a cover that is lifted first. */
export function CoverButton(props: { readonly session: SessionModel; readonly port: PortView }): JSX.Element {
  const lift = (): void =>
    props.session.send({ do: 'cover', port: props.port.id, to: props.port.covered ? 'off' : 'on' });
  return (
    <Show when={props.port.covered !== null}>
      <button type="button" class="btn sm" onClick={lift}>
        {props.port.covered ? word('task.port.coverOff') : word('task.port.coverOn')}
      </button>
    </Show>
  );
}

/** Cap and cover, as they are. */
export function portStands({ covered, capOn }: PortView): string {
  if (covered) return word('task.port.covered');
  return capOn ? word('panels.port.capOn') : word('panels.port.capOff');
}

export function PortTasks(props: { readonly session: SessionModel; readonly portId: string }): JSX.Element {
  const { session } = props;
  const has = (tool: string): boolean => session.facts.tools.includes(tool);
  return (
    <>
      <Show when={has('conversion-kit')}>
        <PortSteps session={session} port={props.portId} />
      </Show>
      <Show when={has('sealer-test')}>
        <button
          type="button"
          class="btn sm"
          onClick={() => session.send({ do: 'test-sealer', port: props.portId })}
        >
          {word('task.port.sealer')}
        </button>
      </Show>
    </>
  );
}

/** A test strip at any port of the car, as the tool's own list. */
export function SealerRows(props: { readonly session: SessionModel }): JSX.Element {
  return (
    <For each={props.session.view().ports}>
      {(port) => (
        <button
          type="button"
          class="btn sm"
          onClick={() => props.session.send({ do: 'test-sealer', port: port.id })}
        >
          {word('task.port.sealerAt', { port: portName(props.session, port.id) })}
        </button>
      )}
    </For>
  );
}
