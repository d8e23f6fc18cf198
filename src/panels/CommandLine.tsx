/** A line that takes the words of the command line, and the list of them. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { calm } from './calm';

/** An order as it is typed, and what it does in a few words. */
export interface Order {
  readonly line: string;
  readonly does: string;
}

/** The one word of the line that is taken in every language. */
const HELP: readonly string[] = ['help', 'ayuda', '?'];

export function CommandLine(props: {
  readonly onLine: (line: string) => string | null;
  readonly orders: () => readonly Order[];
  /** What came of the last act; none while a form says it. */
  readonly outcome: string | undefined;
}): JSX.Element {
  const [line, setLine] = createSignal('');
  const [answer, setAnswer] = createSignal<string | null>(null);
  const [listed, setListed] = createSignal(false);
  let input: HTMLInputElement | undefined;
  const submit = (event: Event): void => {
    event.preventDefault();
    if (HELP.includes(line().trim().toLowerCase())) {
      setListed(true);
      setAnswer(word('words.ordersListed', { count: String(props.orders().length) }));
      setLine('');
      return;
    }
    const found = props.onLine(line());
    setAnswer(found);
    // what was refused stays to be mended, and goes when another is typed
    if (found === null) setLine('');
    else input?.select();
  };
  const said = (): string => answer() ?? props.outcome ?? '';
  const spoken = calm(said);
  return (
    <>
      <form class="field cmd" onSubmit={submit}>
        <label class="field">
          <span>{word('words.write')}</span>
          <input
            ref={input}
            type="text"
            value={line()}
            aria-describedby="words-note"
            onInput={(event) => setLine(event.currentTarget.value)}
            autocomplete="off"
            spellcheck={false}
          />
        </label>
        <span class="xs mut" id="words-note">
          {word('words.writeNote')}
        </span>
        <span class="s" aria-hidden="true">
          {said()}
        </span>
        <span role="status" class="vh">
          {spoken()}
        </span>
      </form>
      <details class="cmds" open={listed()} onToggle={(event) => setListed(event.currentTarget.open)}>
        <summary>{word('words.orders')}</summary>
        <Show when={listed()}>
          <ul class="tl">
            <For each={props.orders()}>
              {(order) => (
                <li>
                  <code lang="en">{order.line}</code> <span class="mut">{order.does}</span>
                </li>
              )}
            </For>
          </ul>
        </Show>
      </details>
    </>
  );
}
