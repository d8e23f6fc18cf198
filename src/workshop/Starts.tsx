/** What to begin with: a template, the text that was here before, a scenario that ships, or nothing. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { draftBefore } from './keep/drafts';
import { shippedText, TEMPLATE_IDS, type TemplateId, templateInWords } from './keep/starts';

/** On a grid of 24: a spot, its double, two, none, steps, goggles. */
const PICTURES: Readonly<Record<TemplateId, string>> = {
  'one-fault': 'M3 5h18v14H3zM12 12m-2.5 0a2.5 2.5 0 1 0 5 0a2.5 2.5 0 1 0-5 0',
  'look-alike': 'M9 12m-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0M13.5 6.3a6 6 0 1 1 0 11.4',
  'two-faults':
    'M3 5h18v14H3zM8.5 12m-2 0a2 2 0 1 0 4 0a2 2 0 1 0-4 0M15.5 12m-2 0a2 2 0 1 0 4 0a2 2 0 1 0-4 0',
  'nothing-wrong': 'M3 5h18v14H3zM7.5 12.5l3 3 6-7',
  'procedure-only': 'M4 6h2M4 12h2M4 18h2M9 6h11M9 12h11M9 18h7',
  'safety-drill': 'M3 10c0-2 2-3 4-3h10c2 0 4 1 4 3v3c0 2-1.5 3-3.5 3S14 15 12 13c-2 2-3 3-5.5 3S3 15 3 13z',
};

export interface Example {
  readonly id: string;
  readonly title: string;
}

export interface StartsProps {
  readonly examples: readonly Example[];
  /** There is a text to go back to. */
  readonly hasText: boolean;
  readonly onText: (text: string) => void;
  readonly onTrouble: (trouble: string) => void;
  readonly onBack: () => void;
}

export function Starts(props: StartsProps): JSX.Element {
  const [example, setExample] = createSignal('');
  const before = draftBefore();
  const fetched = (text: Promise<string>): void => {
    text.then(props.onText, () => props.onTrouble(word('workshop.trouble.notFetched')));
  };
  return (
    <div class="ws-starts">
      <div class="row wrap">
        <h2>{word('workshop.start.title')}</h2>
        <span class="sp" />
        <Show when={props.hasText}>
          <button type="button" class="btn sm qt" onClick={() => props.onBack()}>
            {word('workshop.start.back')}
          </button>
        </Show>
      </div>
      <p class="s mut">{word('workshop.start.lead')}</p>
      <ul class="ws-templates">
        <For each={TEMPLATE_IDS}>
          {(id) => (
            <li>
              <button type="button" class="ws-template" onClick={() => fetched(templateInWords(id))}>
                <svg viewBox="0 0 24 24" class="ic" aria-hidden="true">
                  <path d={PICTURES[id]} />
                </svg>
                <b>{word(`workshop.template.${id}.title`)}</b>
                <small>{word(`workshop.template.${id}.note`)}</small>
              </button>
            </li>
          )}
        </For>
      </ul>
      <div class="ws-others">
        <label class="field">
          <span class="s">{word('workshop.start.shipped')}</span>
          <select value={example()} onChange={(event) => setExample(event.currentTarget.value)}>
            <option value="">{word('workshop.start.choose')}</option>
            <For each={props.examples}>{({ id, title }) => <option value={id}>{title}</option>}</For>
          </select>
        </label>
        <button
          type="button"
          class="btn"
          disabled={example() === ''}
          onClick={() => fetched(shippedText(example()))}
        >
          {word('workshop.start.take')}
        </button>
      </div>
      <div class="row wrap">
        <Show when={before}>
          {(draft) => (
            <button type="button" class="btn sm" onClick={() => props.onText(draft().text)}>
              {word('workshop.start.before')}
            </button>
          )}
        </Show>
        <button type="button" class="btn sm" onClick={() => props.onText('schema: 1\n')}>
          {word('workshop.start.empty')}
        </button>
      </div>
      <p class="s mut">{word('workshop.start.drop')}</p>
    </div>
  );
}
