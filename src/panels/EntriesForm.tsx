/** Everything that is written on the card besides readings, causes and decisions, folded by the stage of the job. */
import { type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { ArrangeRows } from './ArrangeRows';
import { NewLabelRows, OldRows } from './conversionRows';
import { Fold } from './Fold';
import { Form } from './Form';
import { AskRows, ClutchRows, GasRows, LoopRows } from './findingRows';
import { HandOverRows } from './HandOverRows';
import { SumRows } from './SumRows';
import type { SessionModel } from './sessionModel';
import { ChargeLabelRows } from './smallForms';

const STAGE = 'stage';

export function EntriesForm(props: {
  readonly session: SessionModel;
  readonly onClose: () => void;
}): JSX.Element {
  const { session } = props;
  const converts = (): boolean => session.facts.tools.includes('conversion-kit');
  return (
    <Form
      title={word('task.entries.title')}
      sub={word('task.entries.sub')}
      closeLabel={word('app.close')}
      onClose={props.onClose}
    >
      <div class="tucks">
        <Fold title={word('task.entries.before')} name={STAGE}>
          <AskRows session={session} />
        </Fold>
        <Fold title={word('task.entries.found')} name={STAGE}>
          <LoopRows session={session} />
          <GasRows session={session} />
          <ClutchRows session={session} />
        </Fold>
        <Fold title={word('task.entries.sums')} name={STAGE}>
          <SumRows session={session} />
        </Fold>
        <Fold title={word('task.entries.recovery')} name={STAGE}>
          <ArrangeRows session={session} />
        </Fold>
        <Show when={converts()}>
          <Fold title={word('task.entries.old')} name={STAGE}>
            <OldRows session={session} />
          </Fold>
        </Show>
        <Fold title={word('task.entries.label')} name={STAGE}>
          <ChargeLabelRows session={session} />
          <Show when={converts()}>
            <NewLabelRows session={session} />
          </Show>
        </Fold>
        <Fold title={word('task.entries.handOver')} name={STAGE}>
          <HandOverRows session={session} />
        </Fold>
      </div>
    </Form>
  );
}
