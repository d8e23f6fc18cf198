/** Forms of one question each: send on, label, finish. */
import { createSignal, type JSX } from 'solid-js';
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
    </Form>
  );
}
