/** What the owner is told when the car goes back. Several may hold; one press writes each of them. */
import { createSignal, For, type JSX } from 'solid-js';
import { word } from '../words/words';
import { Icon } from './Icon';
import type { SessionModel } from './sessionModel';

export function HandOverRows(props: { readonly session: SessionModel }): JSX.Element {
  const [ticked, setTicked] = createSignal<readonly string[]>([]);
  const sentences = [
    { told: 'all-proven', text: word('task.tell.all-proven') },
    { told: 'charge-not-proven', text: word('task.tell.charge-not-proven') },
    { told: 'leak-not-found', text: word('task.tell.leak-not-found') },
    { told: 'fault-remains', text: word('task.tell.fault-remains') },
    { told: 'do-not-run', text: word('task.tell.do-not-run') },
    { told: 'goes-to-licensed', text: word('task.tell.goes-to-licensed') },
  ];
  const tick = (told: string, isOn: boolean): void => {
    setTicked(isOn ? [...ticked(), told] : ticked().filter((one) => one !== told));
  };
  const write = (): void => {
    for (const told of ticked()) props.session.send({ do: 'hand-over', told });
    setTicked([]);
  };
  return (
    <div class="stack">
      <p class="s mut">{word('task.tell.note')}</p>
      <div class="rad">
        <For each={sentences}>
          {({ told, text }) => (
            <label>
              <input
                type="checkbox"
                checked={ticked().includes(told)}
                onChange={(event) => tick(told, event.currentTarget.checked)}
              />
              <span>{text}</span>
            </label>
          )}
        </For>
      </div>
      <button type="button" class="btn sm" aria-disabled={ticked().length === 0} onClick={write}>
        <Icon name="note" size={18} />
        {word('task.tell.write')}
      </button>
    </div>
  );
}
