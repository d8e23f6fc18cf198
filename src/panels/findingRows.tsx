/** What is found out about a car before a tool is moved: the owner's answers, kind of loop, refrigerant, clutch. */
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { ChoiceChips } from './ChoiceChips';
import { lastWritten } from './lastWritten';
import type { SessionModel } from './sessionModel';

interface Rows {
  readonly session: SessionModel;
}

export function AskRows(props: Rows): JSX.Element {
  const questions = [
    { about: 'converted', text: word('task.ask.converted') },
    { about: 'opened', text: word('task.ask.opened') },
    { about: 'filled', text: word('task.ask.filled') },
    { about: 'used', text: word('task.ask.used') },
  ];
  const asked = (about: string): boolean => props.session.view().asked.includes(about);
  const answer = (about: string): string => props.session.facts.owner[about] ?? word('task.ask.unknown');
  return (
    <>
      <p class="s mut">{word('task.ask.note')}</p>
      <For each={questions}>
        {({ about, text }) => (
          <Show
            when={asked(about)}
            fallback={
              <button type="button" class="btn sm" onClick={() => props.session.send({ do: 'ask', about })}>
                {text}
              </button>
            }
          >
            <p class="s">
              <b>{text}</b> {word('shelf.say', { complaint: answer(about) })}
            </p>
          </Show>
        )}
      </For>
    </>
  );
}

export function LoopRows(props: Rows): JSX.Element {
  return (
    <ChoiceChips
      title={word('task.loop.title')}
      chips={[
        { value: 'orifice-tube', label: word('task.loop.orifice-tube') },
        { value: 'expansion-valve', label: word('task.loop.expansion-valve') },
      ]}
      value={lastWritten(props.session, 'note-loop')}
      onPress={(kind) => props.session.send({ do: 'note-loop', kind })}
    />
  );
}

export function GasRows(props: Rows): JSX.Element {
  return (
    <ChoiceChips
      title={word('task.gas.title')}
      chips={[
        { value: 'R-12', label: word('task.gas.R-12') },
        { value: 'R-134a', label: word('task.gas.R-134a') },
        { value: 'R-1234yf', label: word('task.gas.R-1234yf') },
        { value: 'mixed', label: word('task.gas.mixed') },
        { value: 'unknown', label: word('task.gas.unknown') },
      ]}
      value={lastWritten(props.session, 'note-gas')}
      onPress={(gas) => props.session.send({ do: 'note-gas', gas })}
    />
  );
}

export function ClutchRows(props: Rows): JSX.Element {
  return (
    <ChoiceChips
      title={word('task.clutch.title')}
      chips={[
        { value: 'turning', label: word('task.clutch.turning') },
        { value: 'standing', label: word('task.clutch.standing') },
        { value: 'slipping', label: word('task.clutch.slipping') },
        { value: 'cycling', label: word('task.clutch.cycling') },
      ]}
      value={lastWritten(props.session, 'note-clutch')}
      onPress={(doing) => props.session.send({ do: 'note-clutch', doing })}
    />
  );
}
