/** Last part of the debrief: what to practise, from what was lost, a job for it, and a word of the job's author. */
import { For, type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { figuresFor } from '../instruments/figureWords';
import { word } from '../words/words';
import type { DebriefData, DebriefModel } from './debriefModel';
import { domainName } from './domainName';

/** Less than this is no lesson. */
const LEAST_POINTS = 0.5;

function lessons({ domains, findings }: DebriefData): string[] {
  const critical = new Set(findings.filter(({ kind }) => kind === 'critical').map(({ domain }) => domain));
  return domains
    .map(({ id, earned, possible }) => ({
      id,
      lost: possible - earned,
      isCritical: critical.has(id as never),
    }))
    .filter(({ lost, isCritical }) => isCritical || lost >= LEAST_POINTS)
    .sort((a, b) => Number(b.isCritical) - Number(a.isCritical) || b.lost - a.lost)
    .map(({ id, lost, isCritical }) => {
      const domain = domainName(id);
      if (isCritical) return word('debrief.next.critical', { domain });
      return word('debrief.next.lost', { domain, points: plainNumber(Math.max(1, Math.round(lost))) });
    });
}

export function DebriefNext(props: { readonly debrief: DebriefModel }): JSX.Element {
  const data = (): DebriefData => props.debrief.data;
  const said = (): string[] => (data().scored ? lessons(data()) : []);
  return (
    <>
      <section class="panel nx" aria-label={word('debrief.next.practise')} data-region tabIndex={-1}>
        <h2>{word('debrief.next.practise')}</h2>
        <ul class="lessons">
          <For each={said()} fallback={<li>{word('debrief.next.nothing')}</li>}>
            {(sentence) => <li>{sentence}</li>}
          </For>
        </ul>
        <h3>{word('debrief.next.jobs')}</h3>
        <For each={props.debrief.next}>
          {({ title, minutes, onOpen }, at) => (
            <button type="button" class="btn" classList={{ pri: at() === 0 }} onClick={() => onOpen()}>
              {minutes === null ? title : word('debrief.next.open', { title, minutes: plainNumber(minutes) })}
            </button>
          )}
        </For>
      </section>
      <Show when={data().debriefText !== ''}>
        <section class="panel nx" aria-label={word('debrief.next.authors')} data-region tabIndex={-1}>
          <h2>{word('debrief.next.authors')}</h2>
          <p class="s">{figuresFor(data().debriefText, props.debrief.units)}</p>
        </section>
      </Show>
    </>
  );
}
