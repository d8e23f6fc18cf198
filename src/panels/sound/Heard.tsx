/**
 * What is heard now, in words, whether sounds are on or not; and what is smelt or seen to stand open. Not spoken of
 * itself: the status line has said it when it began.
 */
import { createEffect, createMemo, createSignal, Index, type JSX, on, onCleanup } from 'solid-js';
import { word } from '../../words/words';
import { newlyHappened } from '../newlyHappened';
import { noticedNow } from '../noticedNow';
import type { SessionModel } from '../sessionModel';
import { type Caption, captionBook } from './captionBook';
import { lastingNow } from './lastingNow';
import { momentOf } from './momentOf';
import { lastingWords, momentWords, steadyWords } from './soundWords';

const EVERY_MS = 1000;

function useMoments(session: SessionModel): () => readonly Caption[] {
  const book = captionBook();
  const [standing, setStanding] = createSignal<readonly Caption[]>([]);
  const look = (): void => {
    setStanding(book.standing(Date.now()));
  };
  createEffect(
    on(session.view, (now, before) => {
      if (!before) return;
      for (const { id } of newlyHappened(before, now)) {
        const sound = momentOf(id);
        if (sound) book.hear(sound, Date.now());
      }
      look();
    }),
  );
  const timer = window.setInterval(() => standing().length > 0 && look(), EVERY_MS);
  onCleanup(() => clearInterval(timer));
  return standing;
}

export function Heard(props: { readonly session: SessionModel }): JSX.Element {
  const moments = useMoments(props.session);
  const noises = createMemo(() => lastingNow(props.session));
  const lines = createMemo<string[]>(
    () => {
      const steady = steadyWords(noises());
      return [
        ...(steady === null ? [] : [steady]),
        ...lastingWords(noises()),
        ...noticedNow(props.session),
        ...moments().map(momentWords),
      ];
    },
    [],
    { equals: (before, now) => before.join('\n') === now.join('\n') },
  );
  return (
    <ul class="heard" aria-label={word('panels.sound.title')}>
      <Index each={lines()}>{(line) => <li>{line()}</li>}</Index>
    </ul>
  );
}
