/** The decision bar: a question that follows the job, its answers, hint, finish. Answers taken stay pressed. */
import { createMemo, createSignal, Index, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { IconButton } from './controls';
import { keepTabInside } from './focusKeeping';
import { Icon } from './Icon';
import type { SessionModel } from './sessionModel';

export type FormName =
  | 'finding'
  | 'cause'
  | 'refer'
  | 'label'
  | 'entries'
  | 'sheet'
  | 'car'
  | 'history'
  | 'finish'
  | 'hint';

interface Answer {
  readonly id: string;
  readonly text: string;
  readonly pressed: boolean;
  readonly press: () => void;
}

/** The same answer again within this is the same press. */
const SAME_PRESS_MS = 1000;

function useAnswers(session: SessionModel): () => readonly Answer[] {
  let [written, writtenMs] = ['', Number.NEGATIVE_INFINITY];
  const decide = (answer: string) => (): void => {
    const now = performance.now();
    if (answer === written && now - writtenMs < SAME_PRESS_MS) return;
    [written, writtenMs] = [answer, now];
    session.send({ do: 'decide', answer });
  };
  return createMemo(() => {
    const taken = session
      .view()
      .card.filter((line) => line.kind === 'decision')
      .map((line) => line.params.answer);
    const last = taken[taken.length - 1];
    const charge = {
      id: 'charge',
      text: word('work.decide.charge'),
      pressed: last === 'charge',
      press: decide('charge'),
    };
    const leave = {
      id: 'do-not-charge',
      text: word('work.decide.leave'),
      pressed: last === 'do-not-charge',
      press: decide('do-not-charge'),
    };
    const stop = {
      id: 'stop-charging',
      text: word('work.decide.stop'),
      pressed: last === 'stop-charging',
      press: decide('stop-charging'),
    };
    return last === 'charge' || last === 'stop-charging' ? [charge, stop] : [charge, leave];
  });
}

export function DecisionBar(props: {
  readonly session: SessionModel;
  readonly onForm: (form: FormName) => void;
}): JSX.Element {
  const answers = useAnswers(props.session);
  const [more, setMore] = createSignal(false);
  const charging = (): boolean => answers()[0].pressed;
  const hints = (): boolean => props.session.mode !== 'assessed' && props.session.view().hints.levels > 0;
  let opener: HTMLButtonElement | undefined;
  const close = (): void => {
    setMore(false);
    opener?.focus();
  };
  const openForm = (form: FormName) => (): void => {
    setMore(false);
    props.onForm(form);
  };
  const Others = (): JSX.Element => (
    <>
      <button type="button" class="btn" onClick={openForm('cause')}>
        {word('work.decide.else')}
      </button>
      <button type="button" class="btn" onClick={openForm('refer')}>
        {word('work.decide.refer')}
      </button>
    </>
  );
  const Hint = (): JSX.Element => (
    <Show when={hints()}>
      <button type="button" class="btn qt" onClick={openForm('hint')}>
        <Icon name="hint" />
        {word('work.decide.hint')}
      </button>
    </Show>
  );
  return (
    <section class="dec" aria-label={word('work.region.decide')} data-region tabIndex={-1}>
      <div class="q">
        {charging() ? word('work.decide.charging') : word('work.decide.finding')}
        <small>{word('work.decide.question')}</small>
      </div>
      <AnswerButtons answers={answers()} />
      <span class="row hide-s">
        <Others />
      </span>
      <span class="sp hide-s" />
      <span class="row hide-s">
        <Hint />
        <button type="button" class="btn pri" onClick={openForm('finish')}>
          {word('work.decide.finish')}
        </button>
      </span>
      <button
        type="button"
        class="btn only-s"
        ref={opener}
        aria-haspopup="dialog"
        aria-expanded={more()}
        onClick={() => setMore(true)}
      >
        <Icon name="more" />
        {word('work.decide.more')}
      </button>
      <Show when={more()}>
        <div class="veil">
          <div
            class="sheetb stack"
            role="dialog"
            aria-modal="true"
            aria-label={word('work.decide.title')}
            tabIndex={-1}
            ref={(sheet) => queueMicrotask(() => sheet.focus())}
            onKeyDown={(event) => {
              if (event.key === 'Escape') close();
              else keepTabInside(event, event.currentTarget);
            }}
          >
            <div class="row">
              <h2>{word('work.decide.title')}</h2>
              <span class="sp" />
              <IconButton icon="cross" label={word('app.close')} onPress={close} />
            </div>
            <AnswerButtons answers={answers()} />
            <Others />
            <Hint />
            <button type="button" class="btn" onClick={openForm('sheet')}>
              {word('work.serviceInformation')}
            </button>
            <button type="button" class="btn pri" onClick={openForm('finish')}>
              {word('work.decide.finish')}
            </button>
          </div>
        </div>
      </Show>
    </section>
  );
}

/** One tab stop for the answers; left and right move between them. */
function AnswerButtons(props: { readonly answers: readonly Answer[] }): JSX.Element {
  const buttons: HTMLButtonElement[] = [];
  const onKeyDown = (event: KeyboardEvent, index: number): void => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    buttons[(index + step + props.answers.length) % props.answers.length]?.focus();
  };
  return (
    <Index each={props.answers}>
      {(answer, index) => (
        <button
          type="button"
          class="btn"
          ref={(element) => {
            buttons[index] = element;
          }}
          aria-pressed={answer().pressed}
          onKeyDown={(event) => onKeyDown(event, index)}
          onClick={() => answer().press()}
        >
          {answer().text}
        </button>
      )}
    </Index>
  );
}
