/** What is wrong or could be better, line by line: a press goes there, and where one thing can be meant a button writes it. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import { mendName } from './editor/findingCard';
import { levelName, markPicture } from './editor/markPicture';
import type { Mark } from './editor/marks';
import { isLowScreen } from './isLowScreen';
import type { Written } from './written';

const countOf = (marks: readonly Mark[], level: Mark['level']): number =>
  marks.filter((mark) => mark.level === level).length;

export function Findings(props: { readonly written: Written }): JSX.Element {
  const { written } = props;
  const [isFolded, setFolded] = createSignal(isLowScreen());
  /** Line and column of a mark, counted from one. */
  const placeOf = ({ from }: Mark): { readonly line: number; readonly column: number } => {
    const before = written.text().slice(0, from);
    return { line: before.split('\n').length, column: from - before.lastIndexOf('\n') };
  };
  const isHere = (mark: Mark): boolean => {
    const line = written.text().slice(0, written.cursor()).split('\n').length;
    return placeOf(mark).line === line;
  };
  const summary = (): string => {
    if (!written.checked()) return word('workshop.found.looking');
    const [errors, advice] = [countOf(written.marks(), 'error'), countOf(written.marks(), 'warning')];
    const counts = [
      ...(errors > 0 ? [word('workshop.found.errors', { count: plainNumber(errors) })] : []),
      ...(advice > 0 ? [word('workshop.found.advice', { count: plainNumber(advice) })] : []),
    ];
    if (counts.length > 0) return counts.join(' ');
    if (written.playing() === 'done') return word('workshop.found.soundPlayed');
    return word('workshop.found.sound');
  };
  return (
    <section class="ws-found" aria-label={word('workshop.found.title')}>
      <div class="ws-sum">
        <p role="status">
          <b>{summary()}</b>
          <Show when={written.playing() === 'running'}>
            <span class="xs mut"> {word('workshop.found.playing')}</span>
          </Show>
        </p>
        <Show when={written.marks().length > 0}>
          <button
            type="button"
            class="btn sm qt"
            aria-expanded={!isFolded()}
            onClick={() => setFolded(!isFolded())}
          >
            {isFolded() ? word('workshop.found.unfold') : word('workshop.found.fold')}
          </button>
        </Show>
      </div>
      <Show when={written.marks().length > 0 && !isFolded()}>
        <ol>
          <For each={written.marks()}>
            {(mark) => (
              <li classList={{ here: isHere(mark) }}>
                <button type="button" class="ws-jump" onClick={() => written.editor()?.jumpTo(mark.from)}>
                  <span aria-hidden="true">{markPicture(mark.level)}</span>
                  <span class="vh">{levelName(mark.level)}</span>
                  <span>
                    <b>{mark.code}</b>{' '}
                    <span class="mut">
                      {word('workshop.found.place', {
                        line: String(placeOf(mark).line),
                        column: String(placeOf(mark).column),
                      })}
                    </span>{' '}
                    {mark.message}
                  </span>
                </button>
                <Show when={mark.fix}>
                  {(fix) => (
                    <button type="button" class="btn sm ink" onClick={() => written.editor()?.mend(mark)}>
                      {mendName(fix())}
                      <Show when={isHere(mark)}>
                        <kbd>{word('workshop.found.mendKey')}</kbd>
                      </Show>
                    </button>
                  )}
                </Show>
              </li>
            )}
          </For>
        </ol>
      </Show>
    </section>
  );
}
