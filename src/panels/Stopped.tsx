/** The stop of a practice session: what happened, by which numbers, why it matters, and the way back to before it. */
import { createSignal, type JSX, onMount, Show } from 'solid-js';
import { inWords, writeClock, writePressure } from '../instruments/displayUnits';
import { writerOf } from '../instruments/evidenceUnits';
import { STEP_S } from '../plant/stepTime';
import { sayFinding } from '../scoring/sayFinding';
import type { Stop } from '../session/corePort';
import { isWordId, learnWords, say, word } from '../words/words';
import { keepTabInside } from './focusKeeping';
import { Icon } from './Icon';
import type { SessionModel } from './sessionModel';

/** What happened, by the rule that says so. */
function whatOf(rule: string): string {
  const id = [`work.stopped.what.${rule}`, `aims.${rule}`].find(isWordId);
  return id !== undefined && isWordId(id) ? say({ id }) : word('work.stopped.what.other');
}

/** Why it matters, in the rubric's own words. */
function whyOf(rule: string): string | null {
  const id = `rules.${rule}.why`;
  return isWordId(id) ? say({ id }) : null;
}

/** What was done, with the numbers it was told by, as they stood then; null where only the end of the job tells. */
function sentenceOf(session: SessionModel, { rule, step, quotes }: Stop): string | null {
  if (quotes === null) return null;
  const telling = { rule, step, status: 'broken', evidence: quotes } as const;
  return isWordId(`rules.${rule}.broken`) || isWordId(`rules.${rule}.told`)
    ? sayFinding(telling, writerOf(session.units()))
    : null;
}

/** Both pressures at the moment, where the sentence does not tell more. */
function numbersOf(session: SessionModel): string | null {
  const unit = session.units().pressure;
  const [low, high] = [session.signal('lowSide.gaugePressurePa'), session.signal('highSide.gaugePressurePa')];
  if (Number.isNaN(low) || Number.isNaN(high)) return null;
  return word('work.stopped.numbers', {
    low: inWords(writePressure(low, unit, 'low')),
    high: inWords(writePressure(high, unit, 'high')),
  });
}

export function StopSign(): JSX.Element {
  return (
    <svg width="46" height="46" viewBox="0 0 46 46" aria-hidden="true" class="stop-sign">
      <path d="M14 2h18l12 12v18L32 44H14L2 32V14z" class="octagon" />
      <path d="M15 15l16 16M31 15L15 31" stroke="var(--caution)" stroke-width="4.5" stroke-linecap="round" />
    </svg>
  );
}

interface StoppedProps {
  readonly session: SessionModel;
  readonly stop: Stop;
}

/** What findings say is fetched when the first of them is told. */
export function Stopped(props: StoppedProps): JSX.Element {
  const [isThere, setThere] = createSignal(false);
  void learnWords('findings').finally(() => setThere(true));
  return (
    <Show when={isThere()}>
      <StopCard {...props} />
    </Show>
  );
}

function StopCard(props: StoppedProps): JSX.Element {
  let back: HTMLButtonElement | undefined;
  let box: HTMLDivElement | undefined;
  onMount(() => back?.focus());
  const goBack = (): void => props.session.send({ do: 'rewind', step: props.stop.rewindStep });
  return (
    <>
      <div class="scrim" />
      <div
        class="ov dlg"
        role="alertdialog"
        aria-modal="true"
        aria-labelledby="stop-title"
        aria-describedby="stop-text"
        ref={box}
        onKeyDown={(event) => {
          if (event.key === 'Escape') goBack();
          else if (box) keepTabInside(event, box);
        }}
      >
        <div class="row">
          <StopSign />
          <h2 id="stop-title">{word('work.stopped.title', { what: whatOf(props.stop.rule) })}</h2>
        </div>
        <p id="stop-text">
          {sentenceOf(props.session, props.stop) ??
            `${word('work.stopped.text', { time: writeClock(props.stop.step * STEP_S) })} ${numbersOf(props.session) ?? ''}`}
        </p>
        <Show when={whyOf(props.stop.rule)}>{(why) => <p>{why()}</p>}</Show>
        <p class="s mut">{word('work.stopped.defer')}</p>
        <div class="row wrap">
          <button type="button" class="btn pri" ref={back} onClick={goBack}>
            <Icon name="back" size={18} />
            {word('work.stopped.back')}
          </button>
          <button type="button" class="btn qt" onClick={() => props.session.send({ do: 'begin' })}>
            {word('work.stopped.goOn')}
          </button>
        </div>
      </div>
    </>
  );
}
