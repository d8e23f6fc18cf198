/**
 * The text of a scenario as an editor. It lives in a shadow root, because there its looks are constructed sheets: the page
 * allows no inline ones. Tab is left alone and leads on to the next control.
 */
import { history, historyField, historyKeymap, isolateHistory, standardKeymap } from '@codemirror/commands';
import { yaml } from '@codemirror/lang-yaml';
import { indentUnit } from '@codemirror/language';
import { EditorState, type Extension } from '@codemirror/state';
import { EditorView, highlightActiveLine, keymap, lineNumbers } from '@codemirror/view';
import type { Problem } from '../../../shared/schema/problem';
import { word } from '../../words/words';
import type { TextChange } from '../edit/changes';
import type { Known } from '../text/offers';
import { changedLines, showChanged } from './changedLines';
import { completing } from './completing';
import { editorTheme } from './editorTheme';
import { findingKeys } from './findingKeys';
import { markSigns } from './markSigns';
import { type Mark, marking, marksField } from './marks';

/** What an editor leaves behind: text, cursor, and what can be undone. */
export type EditorMemory = Readonly<Record<string, unknown>>;

export interface Editor {
  text(): string;
  /** Another text takes this one's place; what was written before can be had back with undo. */
  write(text: string): void;
  change(changes: readonly TextChange[]): void;
  mark(problems: readonly Problem[]): void;
  mend(mark: Mark): void;
  jumpTo(offset: number): void;
  focus(): void;
  memory(): EditorMemory;
  destroy(): void;
}

export interface EditorOptions {
  readonly text: string;
  /** Of the editor that was here before, where it had the same text. */
  readonly memory: EditorMemory | null;
  readonly known: () => Known | null;
  readonly onText: (text: string) => void;
  readonly onMarks: (marks: readonly Mark[], cursor: number) => void;
  readonly onSave: () => void;
}

const SHOWN_FOR_MS = 4000;
const KEPT = { history: historyField };

export function createEditor(host: HTMLElement, options: EditorOptions): Editor {
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  let timer = 0;
  const mend = (view: EditorView, { fix }: Mark): void => {
    // Its mark may stand a moment longer than the slip.
    if (!fix || view.state.sliceDoc(fix.from, fix.to) === fix.insert) return;
    view.dispatch({
      changes: fix,
      selection: { anchor: fix.from + fix.insert.length },
      userEvent: 'input.mend',
      annotations: isolateHistory.of('full'),
    });
  };
  const extensions: Extension = [
    editorTheme,
    writing(),
    lineNumbers(),
    markSigns(mend),
    highlightActiveLine(),
    changedLines,
    completing(options.known),
    findingKeys(mend, options.onSave),
    EditorView.updateListener.of(({ state, docChanged, startState, selectionSet }) => {
      if (docChanged) options.onText(state.doc.toString());
      const marks = state.field(marksField);
      if (selectionSet || docChanged || marks !== startState.field(marksField))
        options.onMarks(marks, state.selection.main.head);
    }),
  ];
  const { text, memory } = options;
  const state =
    memory?.doc === text
      ? EditorState.fromJSON(memory, { extensions }, KEPT)
      : EditorState.create({ doc: text, extensions });
  const view = new EditorView({ root, parent: root, state });
  // findings that come or go below change how much of the text can be seen
  const resized = new ResizeObserver(() => {
    if (view.hasFocus) view.dispatch({ effects: EditorView.scrollIntoView(view.state.selection.main.head) });
  });
  resized.observe(host);
  return {
    text: () => view.state.doc.toString(),
    write(text) {
      const whole = { from: 0, to: view.state.doc.length, insert: text };
      view.dispatch({ changes: whole, selection: { anchor: 0 }, scrollIntoView: true });
    },
    change(changes) {
      clearTimeout(timer);
      const tr = view.state.update({ changes: [...changes], userEvent: 'input.form' });
      const lines = changes.map(({ from }) => tr.changes.mapPos(from, 1));
      view.dispatch({ changes: [...changes], userEvent: 'input.form' });
      view.dispatch({
        effects: [showChanged.of(lines), EditorView.scrollIntoView(lines[0], { y: 'center' })],
      });
      timer = window.setTimeout(() => view.dispatch({ effects: showChanged.of([]) }), SHOWN_FOR_MS);
    },
    mark: (problems) => view.dispatch(marking(view.state.doc, problems)),
    mend: (mark) => mend(view, mark),
    jumpTo(offset) {
      const anchor = Math.min(offset, view.state.doc.length);
      view.dispatch({ selection: { anchor }, effects: EditorView.scrollIntoView(anchor, { y: 'center' }) });
      view.focus();
    },
    focus: () => view.focus(),
    memory: () => view.state.toJSON(KEPT),
    destroy() {
      clearTimeout(timer);
      resized.disconnect();
      view.destroy();
    },
  };
}

/** How text is written: indented by two, undone and done again, wrapped at the edge, spoken to in the page's language. */
const writing = (): Extension => [
  yaml(),
  indentUnit.of('  '),
  history(),
  keymap.of([...standardKeymap, ...historyKeymap]),
  EditorView.lineWrapping,
  EditorView.contentAttributes.of({
    'aria-label': word('workshop.text'),
    autocapitalize: 'off',
    autocorrect: 'off',
    spellcheck: 'false',
    tabindex: '0',
  }),
  EditorState.phrases.of({
    Completions: word('workshop.phrase.offers'),
    'Control character': word('workshop.phrase.control'),
    'Selection deleted': word('workshop.phrase.deleted'),
  }),
];
