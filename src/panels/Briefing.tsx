/** Before the clock runs: the job card read aloud once, who and where one is, what counts, and the door. Behind the door focus stands in the bay. */
import { type JSX, onCleanup, onMount, Show } from 'solid-js';
import { word } from '../words/words';
import { BriefingFacts } from './BriefingFacts';
import { keepTabInside } from './focusKeeping';
import { Icon } from './Icon';
import { Deliveries } from './JobCard';
import { RubricRows } from './RubricRows';
import type { SessionModel } from './sessionModel';

export function Briefing(props: { readonly session: SessionModel }): JSX.Element {
  let start: HTMLButtonElement | undefined;
  let box: HTMLDivElement | undefined;
  onMount(() => start?.focus());
  onCleanup(() => queueMicrotask(() => document.getElementById('main')?.focus()));
  return (
    <div class="brief">
      <div
        class="rcard"
        role="dialog"
        aria-modal="true"
        aria-labelledby="brief-title"
        ref={box}
        onKeyDown={(event) => box && keepTabInside(event, box)}
      >
        <div>
          <h2 id="brief-title">{props.session.facts.title}</h2>
          <p class="s mut">{props.session.facts.vehicle}</p>
        </div>
        <div class="brief-body" tabIndex={0} role="group" aria-labelledby="brief-title">
          <p class="quote">{word('shelf.say', { complaint: props.session.facts.complaint })}</p>
          <div>
            <h3>{word('work.card.deliver')}</h3>
            <Deliveries session={props.session} />
          </div>
          <BriefingFacts session={props.session} />
          <Show when={props.session.mode !== 'explore' && props.session.rubric()}>
            {(rubric) => (
              <div>
                <h3>{word('task.rubric.title')}</h3>
                <RubricRows rubric={rubric()} />
              </div>
            )}
          </Show>
          <p class="s mut">{word('work.briefing.text')}</p>
          <Show when={props.session.mode === 'assessed'}>
            <p class="slim-note">{word('panels.briefing.caution')}</p>
          </Show>
        </div>
        <button type="button" class="btn pri" ref={start} onClick={() => props.session.send({ do: 'begin' })}>
          <Icon name="door" size={18} />
          {word('work.briefing.start')}
        </button>
      </div>
    </div>
  );
}
