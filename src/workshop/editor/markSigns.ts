/** How findings show in the text: a sign beside the line, a wave under the letters, and what is wrong where a pointer rests. */
import { type EditorState, type Extension, type Range, RangeSetBuilder } from '@codemirror/state';
import { Decoration, EditorView, GutterMarker, gutter, hoverTooltip } from '@codemirror/view';
import { findingCard } from './findingCard';
import { markPicture } from './markPicture';
import { type Mark, marksField } from './marks';

class Sign extends GutterMarker {
  constructor(private readonly level: Mark['level']) {
    super();
  }
  override eq(other: Sign): boolean {
    return other.level === this.level;
  }
  override toDOM(): Node {
    return markPicture(this.level);
  }
}

const SIGNS = { error: new Sign('error'), warning: new Sign('warning') };
const WAVES = {
  error: Decoration.mark({ class: 'ed-wave ed-error' }),
  warning: Decoration.mark({ class: 'ed-wave ed-advice' }),
};
const WRONG_LINE = Decoration.line({ class: 'ed-wrong' });

/** By lines, of each line the worst first. */
function byLine(state: EditorState): readonly Mark[] {
  const line = (mark: Mark): number => state.doc.lineAt(mark.from).number;
  const rank = ({ level }: Mark): number => (level === 'error' ? 0 : 1);
  return [...state.field(marksField)].sort((a, b) => line(a) - line(b) || rank(a) - rank(b));
}

const signs = gutter({
  class: 'ed-signs',
  markers: ({ state }) => {
    const built = new RangeSetBuilder<GutterMarker>();
    let last = -1;
    for (const { from, level } of byLine(state)) {
      const line = state.doc.lineAt(from).from;
      if (line > last) built.add(line, line, SIGNS[level]);
      last = Math.max(last, line);
    }
    return built.finish();
  },
});

const waves = EditorView.decorations.compute([marksField], (state) => {
  const lines = new Set(
    state
      .field(marksField)
      .flatMap(({ from, level }) => (level === 'error' ? [state.doc.lineAt(from).from] : [])),
  );
  const ranges: Range<Decoration>[] = [
    ...[...lines].map((from) => WRONG_LINE.range(from)),
    ...state
      .field(marksField)
      .flatMap(({ from, to, level }) => (to > from ? [WAVES[level].range(from, to)] : [])),
  ];
  return Decoration.set(ranges, true);
});

/** `mend` writes what would be right. */
export function markSigns(mend: (view: EditorView, mark: Mark) => void): Extension {
  const card = hoverTooltip((view, at) => {
    const found = view.state
      .field(marksField)
      .filter(({ from, to }) => from <= at && at <= Math.max(to, from + 1));
    const [first] = found;
    if (!first) return null;
    return {
      pos: first.from,
      end: Math.max(...found.map(({ to }) => to)),
      above: true,
      create: () => {
        const dom = document.createElement('div');
        dom.className = 'ed-cards';
        dom.append(...found.map((mark) => findingCard(mark, () => mend(view, mark))));
        return { dom };
      },
    };
  });
  return [marksField, signs, waves, card];
}
