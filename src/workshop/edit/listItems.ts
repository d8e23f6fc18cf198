/** Puts an item behind the others of a list, or takes one out, lines and remarks of the others untouched. */
import { isScalar, isSeq } from 'yaml';
import { addGroup } from './addMissing';
import type { TextChange } from './changes';
import { nodeAt, type Path, type Tree } from './tree';

/** Where no list is there it becomes one; null where something else stands there. `item` is one line. */
export function addItem(text: string, tree: Tree, path: Path, item: string): TextChange | null {
  const list = nodeAt(tree, path);
  if (list === null || (isScalar(list) && list.value === null))
    return addGroup(text, tree, path, [`- ${item}`]);
  if (!isSeq(list) || !list.range) return null;
  const [from, to] = list.range;
  if (list.items.length === 0) return { from, to, insert: `\n  - ${item}` };
  const last = rangeOf(list.items[list.items.length - 1]);
  if (list.flow) return { from: last[1], to: last[1], insert: `, ${item}` };
  const end = text[last[1] - 1] === '\n' ? last[1] - 1 : endOfLine(text, last[1]);
  return { from: end, to: end, insert: `\n${' '.repeat(dashColumn(text, from))}- ${item}` };
}

/** The last one leaves an empty list. */
export function removeItem(text: string, tree: Tree, path: Path, index: number): TextChange | null {
  const list = nodeAt(tree, path);
  if (!isSeq(list) || !list.range || index >= list.items.length) return null;
  if (list.items.length === 1) {
    const [from] = list.range;
    const start = list.flow ? from : text.lastIndexOf(':', from) + 1;
    const to = rangeOf(list.items[0])[1];
    const end = list.flow ? list.range[1] : text[to - 1] === '\n' ? to - 1 : to;
    return { from: start, to: end, insert: list.flow ? '[]' : ' []' };
  }
  const [from, to] = rangeOf(list.items[index]);
  if (list.flow)
    return index === 0
      ? { from, to: rangeOf(list.items[1])[0], insert: '' }
      : { from: rangeOf(list.items[index - 1])[1], to, insert: '' };
  const start = text.lastIndexOf('\n', from) + 1;
  const end = text[to - 1] === '\n' ? to : Math.min(text.length, endOfLine(text, to) + 1);
  return { from: start, to: end, insert: '' };
}

const rangeOf = (node: unknown): readonly [number, number] => {
  const { range } = node as { readonly range: readonly [number, number, number] };
  return [range[0], range[1]];
};

const dashColumn = (text: string, first: number): number => first - (text.lastIndexOf('\n', first - 1) + 1);

function endOfLine(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  return end < 0 ? text.length : end;
}
