/** A part of the program that did not load: what that means, loading again, and the way back. */
import type { JSX } from 'solid-js';
import { word } from '../words/words';
import { TopBar } from './TopBar';

export function Missing(props: {
  /** What the browser says of it. */
  readonly reason: string;
  readonly onReload: () => void;
  readonly onHome: () => void;
}): JSX.Element {
  return (
    <>
      <TopBar onHome={props.onHome} />
      <main class="pg resm" id="main">
        <div class="rcard" role="alert">
          <h1>{word('app.missing.title')}</h1>
          <p>{word('app.missing.text')}</p>
          <p class="xs mut">{props.reason}</p>
          <button type="button" class="btn pri" onClick={() => props.onReload()}>
            {word('app.missing.reload')}
          </button>
          <button type="button" class="btn" onClick={() => props.onHome()}>
            {word('app.scenarios')}
          </button>
        </div>
      </main>
    </>
  );
}
