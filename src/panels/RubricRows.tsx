/** What is asked for and how much it weighs, told before a session that counts. Rules that say the same stand once. */
import { For, type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { isWordId, say, word } from '../words/words';
import { domainName } from './domainName';
import { Fold } from './Fold';
import type { AskedRule, RubricOutline } from './rubricOutline';

/** The line of a rule; a scenario's own rules would give its answer away and share one. */
function aimOf(rule: string): string {
  const id = `aims.${rule}`;
  return isWordId(id) ? say({ id }) : word('task.rubric.own');
}

/** Lines of a domain, each once; critical where any rule behind it is. */
function linesOf(rules: readonly AskedRule[]): { readonly aim: string; readonly critical: boolean }[] {
  const lines = new Map<string, boolean>();
  for (const { id, critical } of rules) lines.set(aimOf(id), (lines.get(aimOf(id)) ?? false) || critical);
  return [...lines].map(([aim, critical]) => ({ aim, critical }));
}

export function RubricRows(props: { readonly rubric: RubricOutline }): JSX.Element {
  const weighed = () => props.rubric.domains.filter(({ rules }) => rules.length > 0);
  return (
    <div class="tucks">
      <p class="s mut">{word('task.rubric.note', { mark: plainNumber(props.rubric.passMark) })}</p>
      <For each={weighed()}>
        {({ id, weight, rules }) => (
          <Fold
            title={word('task.rubric.domain', { domain: domainName(id), weight: plainNumber(weight) })}
            name="rubric"
          >
            <ul class="tl">
              <For each={linesOf(rules)}>
                {({ aim, critical }) => (
                  <li>
                    {aim}
                    <Show when={critical}>
                      {' '}
                      <span class="chip">{word('task.rubric.critical')}</span>
                    </Show>
                  </li>
                )}
              </For>
            </ul>
          </Fold>
        )}
      </For>
    </div>
  );
}
