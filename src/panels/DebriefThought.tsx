/** Second part of the debrief: two questions before the score is seen. Nobody scores the answers; they may be skipped. */
import { createSignal, type JSX } from 'solid-js';
import type { Thought } from '../session/sessionFileText';
import { word } from '../words/words';
import type { DebriefModel } from './debriefModel';

export interface DebriefThoughtProps {
  readonly debrief: DebriefModel;
  readonly onDone: () => void;
}

const MOST_LETTERS = 2000;

function Question(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}): JSX.Element {
  return (
    <>
      <label for={props.id}>{props.label}</label>
      <textarea
        id={props.id}
        rows="3"
        maxLength={MOST_LETTERS}
        placeholder={word('debrief.thought.hint')}
        value={props.value}
        onInput={(event) => props.onChange(event.currentTarget.value)}
      />
    </>
  );
}

export function DebriefThought(props: DebriefThoughtProps): JSX.Element {
  const [thought, setThought] = createSignal<Thought>(props.debrief.thought());
  const keep = (change: Partial<Thought>): void => {
    setThought({ ...thought(), ...change });
    props.debrief.onThought(thought());
  };
  return (
    <section class="panel th" aria-label={word('debrief.steps.thought')} data-region tabIndex={-1}>
      <h2>{word('debrief.thought.title')}</h2>
      <p class="s mut">{word('debrief.thought.note')}</p>
      <Question
        id="thought-surprised"
        label={word('debrief.thought.surprised')}
        value={thought().surprised}
        onChange={(surprised) => keep({ surprised })}
      />
      <Question
        id="thought-otherwise"
        label={word('debrief.thought.otherwise')}
        value={thought().otherwise}
        onChange={(otherwise) => keep({ otherwise })}
      />
      <div class="row">
        <button type="button" class="btn pri grow" onClick={() => props.onDone()}>
          {word('debrief.thought.showWhy')}
        </button>
        <button type="button" class="btn gh" onClick={() => props.onDone()}>
          {word('debrief.thought.skip')}
        </button>
      </div>
    </section>
  );
}
