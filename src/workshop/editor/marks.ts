/** What is wrong with the text, kept at its letters while the text goes on changing. */
import { StateEffect, StateField, type Text, type TransactionSpec } from '@codemirror/state';
import type { Problem } from '../../../shared/schema/problem';

export interface Mark {
  readonly from: number;
  readonly to: number;
  readonly level: Problem['level'];
  readonly code: string;
  readonly message: string;
  /** What would mend it. */
  readonly fix?: { readonly from: number; readonly to: number; readonly insert: string };
}

interface Place {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

const setMarks = StateEffect.define<readonly Mark[]>();

export const marksField = StateField.define<readonly Mark[]>({
  create: () => [],
  update(marks, { changes, docChanged, effects }) {
    const given = effects.find((effect) => effect.is(setMarks));
    if (given) return given.value;
    if (!docChanged) return marks;
    const at = (offset: number, side: -1 | 1): number => changes.mapPos(offset, side);
    return marks.map(({ fix, ...mark }) => ({
      ...mark,
      from: at(mark.from, 1),
      to: Math.max(at(mark.from, 1), at(mark.to, -1)),
      ...(fix
        ? { fix: { ...fix, from: at(fix.from, 1), to: Math.max(at(fix.from, 1), at(fix.to, -1)) } }
        : {}),
    }));
  },
});

/** In order of their places; of two at one place the error first. */
export function marking(text: Text, problems: readonly Problem[]): TransactionSpec {
  const marks = problems.map(({ level, code, message, fix, ...place }): Mark => {
    const mended = fix ? { fix: { ...spanOf(text, fix.at), insert: fix.to } } : {};
    return { ...spanOf(text, place), level, code, message, ...mended };
  });
  const rank = ({ level }: Mark): number => (level === 'error' ? 0 : 1);
  return { effects: setMarks.of(marks.sort((a, b) => a.from - b.from || rank(a) - rank(b))) };
}

function spanOf(text: Text, { line, column, length }: Place): { readonly from: number; readonly to: number } {
  const at = text.line(Math.max(1, Math.min(text.lines, line)));
  const from = Math.min(at.to, at.from + Math.max(0, column - 1));
  return { from, to: Math.min(text.length, from + length) };
}
