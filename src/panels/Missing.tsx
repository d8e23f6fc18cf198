/** A part of the program that did not come: what that means, asking for it again, and the way back. */
import { type JSX, onCleanup, onMount, Show } from 'solid-js';
import { word } from '../words/words';
import { TopBar } from './TopBar';

export function Missing(props: {
  readonly onAgain: () => void;
  /** Not where the network is known to be gone: the page would be gone too. */
  readonly onReload: (() => void) | null;
  /** Back to where the part was asked for, where that still stands. */
  readonly onBack: (() => void) | null;
  readonly onHome: () => void;
}): JSX.Element {
  return (
    <>
      <TopBar onHome={props.onHome} />
      <main class="pg resm" id="main">
        <div class="rcard" role="alert">
          <h1>{word('app.missing.title')}</h1>
          <p>{word('app.missing.text')}</p>
          <button type="button" class="btn pri" onClick={() => props.onAgain()}>
            {word('app.missing.again')}
          </button>
          <Show when={props.onReload}>
            {(reload) => (
              <button type="button" class="btn" onClick={() => reload()()}>
                {word('app.missing.reload')}
              </button>
            )}
          </Show>
          <Show
            when={props.onBack}
            fallback={
              <button type="button" class="btn" onClick={() => props.onHome()}>
                {word('app.scenarios')}
              </button>
            }
          >
            {(back) => (
              <button type="button" class="btn" onClick={() => back()()}>
                {word('app.missing.back')}
              </button>
            )}
          </Show>
        </div>
      </main>
    </>
  );
}

/** The same of a form, in its place over the bay. */
export function FormMissing(props: {
  readonly onAgain: () => void;
  readonly onClose: () => void;
}): JSX.Element {
  const before = document.activeElement;
  let box: HTMLDivElement | undefined;
  onMount(() => box?.focus());
  onCleanup(() => before instanceof HTMLElement && before.focus());
  return (
    <div
      class="ov form"
      role="dialog"
      aria-label={word('app.missing.form')}
      tabIndex={-1}
      ref={box}
      onKeyDown={({ key }) => key === 'Escape' && props.onClose()}
    >
      <div class="fh">
        <h2>{word('app.missing.form')}</h2>
      </div>
      <div class="fb">
        <p role="alert">{word('app.missing.formText')}</p>
      </div>
      <div class="ff">
        <button type="button" class="btn" onClick={() => props.onClose()}>
          {word('app.missing.close')}
        </button>
        <button type="button" class="btn pri" onClick={() => props.onAgain()}>
          {word('app.missing.again')}
        </button>
      </div>
    </div>
  );
}
