/** Lines that were changed from outside the text are shown for a while, so that a reader sees what the form did. */
import { StateEffect, StateField } from '@codemirror/state';
import { Decoration, type DecorationSet, EditorView } from '@codemirror/view';

export const showChanged = StateEffect.define<readonly number[]>();

const LINE = Decoration.line({ class: 'ed-changed' });

export const changedLines = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update(shown, { changes, effects, state }) {
    const given = effects.find((effect) => effect.is(showChanged));
    if (!given) return shown.map(changes);
    const lines = new Set(given.value.map((at) => state.doc.lineAt(Math.min(at, state.doc.length)).from));
    return Decoration.set([...lines].sort((a, b) => a - b).map((from) => LINE.range(from)));
  },
  provide: (field) => EditorView.decorations.from(field),
});
