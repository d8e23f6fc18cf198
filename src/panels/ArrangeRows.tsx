/** The old charge goes into a licensed person's tank, before anything else is done. */
import type { JSX } from 'solid-js';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

export function ArrangeRows(props: { readonly session: SessionModel }): JSX.Element {
  return (
    <>
      <p class="s">{word('task.arrange.text')}</p>
      <button
        type="button"
        class="btn sm"
        onClick={() => props.session.send({ do: 'arrange', what: 'recovery' })}
      >
        {word('task.arrange.press')}
      </button>
    </>
  );
}
