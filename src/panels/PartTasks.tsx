/** What is done at a part itself: the clutch watched, oil filled in, switches bridged, a plug pulled, a label read. */
import { type JSX, Match, Show, Switch } from 'solid-js';
import { word } from '../words/words';
import { CutOutButton, NewLabelRows, OilRows, OldRows, SealsButton } from './conversionRows';
import { Fold } from './Fold';
import { ClutchRows, LoopRows } from './findingRows';
import { BridgeRows, IsolateButton } from './hazardRows';
import type { SessionModel } from './sessionModel';

interface Rows {
  readonly session: SessionModel;
}

function AtCompressor(props: Rows & { readonly converts: boolean; readonly electric: boolean }): JSX.Element {
  const { session } = props;
  return (
    <>
      <Show when={props.electric} fallback={<ClutchRows session={session} />}>
        <IsolateButton session={session} />
      </Show>
      <Fold title={word('task.oil.title')}>
        <OilRows session={session} />
      </Fold>
      <Show when={props.converts}>
        <div class="row wrap">
          <SealsButton session={session} />
          <CutOutButton session={session} />
        </div>
      </Show>
      <Fold title={word('task.bridge.title')}>
        <BridgeRows session={session} of={['low-switch', 'high-switch']} />
      </Fold>
    </>
  );
}

const METERING_AND_STORE: readonly string[] = ['accumulator', 'drier', 'orifice', 'txv'];

export function PartTasks(props: Rows & { readonly part: string }): JSX.Element {
  const { session } = props;
  const kind = (): string => session.layout.parts.find(({ id }) => id === props.part)?.kind ?? '';
  const converts = (): boolean => session.facts.tools.includes('conversion-kit');
  return (
    <Switch>
      <Match when={kind().startsWith('compressor') || kind().includes('clutch')}>
        <AtCompressor session={session} converts={converts()} electric={kind() === 'compressor-electric'} />
      </Match>
      <Match when={kind() === 'service-plug'}>
        <IsolateButton session={session} />
      </Match>
      <Match when={METERING_AND_STORE.includes(props.part)}>
        <LoopRows session={session} />
      </Match>
      <Match when={props.part === 'label' && converts()}>
        <OldRows session={session} />
        <NewLabelRows session={session} />
      </Match>
    </Switch>
  );
}
