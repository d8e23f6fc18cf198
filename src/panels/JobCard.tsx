/** The job card: a tag that is written on. Complaint, facts, what to deliver, findings with their time, latest first. */
import { For, type JSX, Show } from 'solid-js';
import { inWords, plainNumber, writeClock, writeTemperature } from '../instruments/displayUnits';
import { STEP_S } from '../plant/stepTime';
import { word } from '../words/words';
import { cardSentence, deliverySentence } from './cardWords';
import { Icon } from './Icon';
import type { SessionModel } from './sessionModel';

export function Deliveries(props: { readonly session: SessionModel }): JSX.Element {
  return (
    <ul class="chk">
      <For each={props.session.view().deliveries}>
        {(delivery) => (
          <li>
            <i class="box" classList={{ y: delivery.done }}>
              <Show when={delivery.done}>
                <Icon name="tick" size={13} />
              </Show>
            </i>
            <span>
              {deliverySentence(props.session, delivery.id)}
              <span class="vh"> {delivery.done ? word('work.card.done') : word('work.card.open')}</span>
            </span>
          </li>
        )}
      </For>
    </ul>
  );
}

export function Findings(props: { readonly session: SessionModel }): JSX.Element {
  const lines = () => [...props.session.view().card].reverse().sort((a, b) => b.step - a.step);
  return (
    <Show when={lines().length > 0} fallback={<p class="emp">{word('work.card.none')}</p>}>
      <ul class="fnd">
        <For each={lines()}>
          {(line) => (
            <li>
              <time>{writeClock(line.step * STEP_S)}</time>
              <span>{cardSentence(props.session, line)}</span>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}

export function JobCard(props: {
  readonly session: SessionModel;
  readonly onWrite: () => void;
  readonly onLabel: () => void;
  readonly onEntries: () => void;
}): JSX.Element {
  const facts = () => props.session.facts;
  const air = (): string => {
    const temperature = inWords(writeTemperature(facts().airTemperatureK, props.session.units().temperature));
    return word('shelf.airText', { temperature, humidity: plainNumber(facts().humidityPercent) });
  };
  return (
    <aside class="job" aria-label={word('work.region.jobCard')} data-region tabIndex={-1}>
      <div class="tag">
        <i class="hole" />
        <div class="hd">
          <h2>{word('work.card.title')}</h2>
          <span class="s mut">{facts().vehicle}</span>
        </div>
        <div class="bd" tabIndex={0} role="group" aria-label={word('work.card.title')}>
          <p class="quote">{word('shelf.say', { complaint: facts().complaint })}</p>
          <dl class="kv">
            <dt>{word('work.card.outside')}</dt>
            <dd>{air()}</dd>
          </dl>
          <div>
            <h3>{word('work.card.deliver')}</h3>
            <Deliveries session={props.session} />
          </div>
          <div>
            <h3>
              {word('work.card.findings')} <span class="mut s">{word('work.card.latest')}</span>
            </h3>
            <Findings session={props.session} />
          </div>
        </div>
        <div class="ft stack">
          <button type="button" class="btn sm full" onClick={() => props.onWrite()}>
            <Icon name="note" size={18} />
            {word('work.card.write')}
          </button>
          <button type="button" class="btn sm full" onClick={() => props.onEntries()}>
            <Icon name="more" size={18} />
            {word('task.entries.open')}
          </button>
          <button type="button" class="btn sm full hide-m" onClick={() => props.onLabel()}>
            <Icon name="doc" size={18} />
            {word('work.card.label')}
          </button>
        </div>
      </div>
    </aside>
  );
}
