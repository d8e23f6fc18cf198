/** Forms of one question each: send on, label, finish. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import { Form } from './Form';
import { Deliveries, Findings } from './JobCard';
import type { SessionModel } from './sessionModel';

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
      <Findings session={props.session} />
    </Form>
  );
}

export function LabelForm(props: SmallForm): JSX.Element {
  const [grams, setGrams] = createSignal(0);
  const write = (): void => {
    const rounded = Math.round(grams() / LABEL_STEP_G) * LABEL_STEP_G;
    props.session.send({ do: 'write-label', grams: Math.max(0, Math.min(LABEL_MAX_G, rounded)) });
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
      <label class="field">
        <span>{word('panels.label.grams')}</span>
        <input
          type="number"
          inputmode="numeric"
          min={0}
          max={LABEL_MAX_G}
          step={LABEL_STEP_G}
          value={grams()}
          onInput={(event) => setGrams(Number(event.currentTarget.value) || 0)}
        />
      </label>
    </Form>
  );
}

/** What still stands open at the car, as a list without a judgement. */
function standsOpen(session: SessionModel): string[] {
  const { hoses, ports, card } = session.view();
  const said: string[] = [];
  if (session.signal('engine.rpm') > 0) said.push(word('panels.finish.engine'));
  if (hoses.some((hose) => hose.port !== null)) said.push(word('panels.finish.hoses'));
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
