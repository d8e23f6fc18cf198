/** Forms of one question each: send on, label, finish. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import { ArrangeRows } from './ArrangeRows';
import { Fold } from './Fold';
import { Form } from './Form';
import { HandOverRows } from './HandOverRows';
import { Deliveries, Findings } from './JobCard';
import { NumberField } from './NumberField';
import type { SessionModel } from './sessionModel';
import { valveStands } from './valveStands';

interface SmallForm {
  readonly session: SessionModel;
  readonly onClose: () => void;
}

const LABEL_STEP_G = 5;
const LABEL_MAX_G = 2000;

export function ReferForm(props: SmallForm): JSX.Element {
  return (
    <Form
      title={word('panels.refer.title')}
      sub={word('panels.refer.sub')}
      onClose={props.onClose}
      foot={
        <>
          <button type="button" class="btn" onClick={() => props.onClose()}>
            {word('panels.finding.notYet')}
          </button>
          <button
            type="button"
            class="btn pri"
            onClick={() => {
              props.session.send({ do: 'decide', answer: 'refer' });
              props.onClose();
            }}
          >
            {word('panels.refer.write')}
          </button>
        </>
      }
    >
      <p>{word('panels.refer.text')}</p>
      <Fold title={word('task.arrange.title')}>
        <ArrangeRows session={props.session} />
      </Fold>
      <Findings session={props.session} />
    </Form>
  );
}

/** The charge as it stands now, as a row of a larger form. */
export function ChargeLabelRows(props: { readonly session: SessionModel }): JSX.Element {
  const [grams, setGrams] = createSignal(0);
  return (
    <div class="stack">
      <b class="s">{word('task.newLabel.charge')}</b>
      <Grams value={grams()} onSet={setGrams} />
      <button
        type="button"
        class="btn sm"
        onClick={() => props.session.send({ do: 'write-label', grams: grams() })}
      >
        {word('panels.label.write')}
      </button>
    </div>
  );
}

function Grams(props: { readonly value: number; readonly onSet: (grams: number) => void }): JSX.Element {
  return (
    <NumberField
      label={word('panels.label.grams')}
      value={props.value}
      most={LABEL_MAX_G}
      step={LABEL_STEP_G}
      onSet={props.onSet}
    />
  );
}

export function LabelForm(props: SmallForm): JSX.Element {
  const [grams, setGrams] = createSignal(0);
  const write = (): void => {
    props.session.send({ do: 'write-label', grams: grams() });
    props.onClose();
  };
  return (
    <Form
      title={word('panels.label.title')}
      sub={word('panels.label.sub')}
      onClose={props.onClose}
      foot={
        <>
          <button type="button" class="btn" onClick={() => props.onClose()}>
            {word('panels.finding.notYet')}
          </button>
          <button type="button" class="btn pri" onClick={write}>
            {word('panels.label.write')}
          </button>
        </>
      }
    >
      <Grams value={grams()} onSet={setGrams} />
    </Form>
  );
}

const VALVES = [
  ['manifold.low.sixteenths', 'panels.manifold.low'],
  ['manifold.high.sixteenths', 'panels.manifold.high'],
  ['chargingTank.valveSixteenths', 'panels.service.tankValve'],
] as const;

/** What still stands open at the car, as a list without a judgement. */
function standsOpen(session: SessionModel): string[] {
  const { hoses, ports, cans, devices, card } = session.view();
  const said: string[] = [];
  if (session.signal('engine.rpm') > 0) said.push(word('panels.finish.engine'));
  if (hoses.some((hose) => hose.port !== null)) said.push(word('panels.finish.hoses'));
  for (const { id, onto, valveSixteenths } of cans)
    if (onto !== null)
      said.push(word('panels.finish.can', { can: session.nameOf(id), valve: valveStands(valveSixteenths) }));
  for (const { id, onto } of devices)
    if (onto !== null) said.push(word('panels.finish.device', { device: session.nameOf(id) }));
  for (const [signal, valve] of VALVES) {
    const turn = session.signal(signal);
    if (turn > 0) said.push(word('panels.finish.valve', { valve: word(valve), stands: valveStands(turn) }));
  }
  if (ports.some((port) => !port.capOn)) said.push(word('panels.finish.caps'));
  if (!card.some((line) => line.kind === 'label')) said.push(word('panels.finish.label'));
  return said;
}

export function FinishForm(props: SmallForm): JSX.Element {
  const open = (): number => props.session.view().deliveries.filter((delivery) => !delivery.done).length;
  return (
    <Form
      title={word('panels.finish.title')}
      sub={
        open() === 0
          ? word('panels.finish.allDone')
          : word('panels.finish.open', { count: plainNumber(open()) })
      }
      onClose={props.onClose}
      foot={
        <>
          <button type="button" class="btn" onClick={() => props.onClose()}>
            {word('panels.finish.stay')}
          </button>
          <button
            type="button"
            class="btn pri"
            onClick={() => {
              props.onClose();
              props.session.send({ do: 'finish' });
            }}
          >
            {word('panels.finish.go')}
          </button>
        </>
      }
    >
      <Deliveries session={props.session} />
      <Fold title={word('task.tell.title')}>
        <HandOverRows session={props.session} />
      </Fold>
      <Show when={props.session.mode !== 'assessed' && standsOpen(props.session).length > 0}>
        <div class="stack">
          <h3>{word('panels.finish.stands')}</h3>
          <ul class="tl">
            <For each={standsOpen(props.session)}>{(line) => <li>{line}</li>}</For>
          </ul>
        </div>
      </Show>
    </Form>
  );
}
