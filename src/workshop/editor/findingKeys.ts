/** Keys of the text besides those of writing: to the next finding and the one before, to mend one, to save the file. */
import type { Extension } from '@codemirror/state';
import { EditorView, keymap } from '@codemirror/view';
import { type Mark, marksField } from './marks';

/** Alt+M mends what is wrong in the cursor's line, Alt+N and Alt+P go to the next and the one before, Ctrl+S saves. */
export function findingKeys(mend: (view: EditorView, mark: Mark) => void, onSave: () => void): Extension {
  const inLine = (view: EditorView): Mark | undefined => {
    const { from, to } = view.state.doc.lineAt(view.state.selection.main.head);
    return view.state.field(marksField).find((mark) => mark.fix && mark.from >= from && mark.from <= to);
  };
  const go = (step: 1 | -1) => (view: EditorView) => {
    const { head } = view.state.selection.main;
    const marks = view.state.field(marksField);
    const ahead = marks.filter(({ from }) => (step > 0 ? from > head : from < head));
    const next = step > 0 ? (ahead[0] ?? marks[0]) : (ahead.at(-1) ?? marks.at(-1));
    if (next)
      view.dispatch({
        selection: { anchor: next.from },
        effects: EditorView.scrollIntoView(next.from, { y: 'center' }),
      });
    return true;
  };
  return keymap.of([
    {
      key: 'Alt-m',
      run: (view) => {
        const mark = inLine(view);
        if (mark) mend(view, mark);
        return true;
      },
    },
    { key: 'Alt-n', run: go(1) },
    { key: 'Alt-p', run: go(-1) },
    {
      key: 'Mod-s',
      preventDefault: true,
      run: () => {
        onSave();
        return true;
      },
    },
  ]);
}
