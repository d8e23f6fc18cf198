/** Before the clock runs: the job card read aloud once, and the door. */
import { type JSX, onMount } from 'solid-js';
import { word } from '../words/words';
import { Icon } from './Icon';
import { Deliveries } from './JobCard';
import type { SessionModel } from './sessionModel';

export function Briefing(props: { readonly session: SessionModel }): JSX.Element {
  let start: HTMLButtonElement | undefined;
  onMount(() => start?.focus());
  return (
    <div class="brief">
      <div class="rcard" role="dialog" aria-modal="true" aria-labelledby="brief-title">
        <div>
          <h2 id="brief-title">{props.session.facts.title}</h2>
          <p class="s mut">{props.session.facts.vehicle}</p>
        </div>
        <p class="quote">{word('shelf.say', { complaint: props.session.facts.complaint })}</p>
        <div>
          <h3>{word('work.card.deliver')}</h3>
          <Deliveries session={props.session} />
        </div>
        <p class="s mut">{word('work.briefing.text')}</p>
        <button type="button" class="btn pri" ref={start} onClick={() => props.session.send({ do: 'begin' })}>
          <Icon name="door" size={18} />
          {word('work.briefing.start')}
        </button>
      </div>
    </div>
  );
}
