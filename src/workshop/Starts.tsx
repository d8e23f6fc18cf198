/** What to begin with: a template, the text that was here before, a scenario that ships, or nothing. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { draftBefore } from './keep/drafts';
import { shippedText, TEMPLATE_IDS, templateText } from './keep/starts';

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
              <button type="button" class="ropt" onClick={() => fetched(templateText(id))}>
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
