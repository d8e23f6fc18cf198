/** The form that is open over the bay, whichever it is. */
import { type JSX, Match, Switch } from 'solid-js';
import { CarForm } from './CarForm';
import { CauseForm } from './CauseForm';
import { EntriesForm } from './EntriesForm';
import { FindingForm } from './FindingForm';
import { Outcome } from './Form';
import { HintPanel } from './HintPanel';
import { HistoryForm } from './HistoryForm';
import { LookForm, PortForm } from './LookForm';
import { SheetForm } from './SheetForm';
import { FinishForm, LabelForm, ReferForm } from './smallForms';
import { ToolForm } from './ToolForm';
import type { Open, WorkUi } from './workUi';

const as = <K extends Open['kind']>(open: Open | null, kind: K): Extract<Open, { kind: K }> | undefined =>
  open?.kind === kind ? (open as Extract<Open, { kind: K }>) : undefined;

export default function OpenForm(props: {
  readonly ui: WorkUi;
  readonly onConnect: (hose: string, port: string) => void;
}): JSX.Element {
  const open = () => props.ui.open();
  const session = props.ui.session;
  const close = props.ui.close;
  return (
    <Outcome.Provider value={session.notice}>
      <Switch>
        <Match when={as(open(), 'tool')}>
          {(one) => (
            <ToolForm session={session} tool={one().tool} picture={props.ui.picture()} onClose={close} />
          )}
        </Match>
        <Match when={as(open(), 'port')}>
          {(one) => (
            <PortForm
              session={session}
              portId={one().port}
              picture={props.ui.picture()}
              heldHose={null}
              onConnect={props.onConnect}
              onClose={close}
            />
          )}
        </Match>
        <Match when={as(open(), 'part')}>
          {(one) => (
            <LookForm session={session} part={one().part} picture={props.ui.picture()} onClose={close} />
          )}
        </Match>
        <Match when={as(open(), 'finding')}>
          <FindingForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'cause')}>
          <CauseForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'refer')}>
          <ReferForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'label')}>
          <LabelForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'entries')}>
          <EntriesForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'sheet')}>
          <SheetForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'history')}>
          <HistoryForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'car')}>
          <CarForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'finish')}>
          <FinishForm session={session} onClose={close} />
        </Match>
        <Match when={as(open(), 'hint')}>
          <HintPanel session={session} onClose={close} />
        </Match>
      </Switch>
    </Outcome.Provider>
  );
}
