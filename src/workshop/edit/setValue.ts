/** Writes a value at its place. Where key or group is missing, it gets lines of its own. */
import { isScalar, stringify } from 'yaml';
import { addMissing } from './addMissing';
import type { TextChange } from './changes';
import { nodeAt, type Path, type Tree } from './tree';

/** Null where there is no place for it. */
export function setValue(text: string, tree: Tree, path: Path, value: string | number): TextChange | null {
  const node = nodeAt(tree, path);
  const written = asWritten(value);
  if (isScalar(node) && node.range) {
    const [from, to] = node.range;
    // sentences over several lines end with the line
    const end = text.slice(from, to).endsWith('\n') ? '\n' : '';
    return { from, to, insert: from === to ? ` ${written}` : `${written}${end}` };
  }
  return node === null ? addMissing(text, tree, path, [` ${written}`]) : null;
}

/** In quotes only where it has to be; always on one line. */
const asWritten = (value: string | number): string =>
  stringify(typeof value === 'string' ? value.replace(/\s+/g, ' ').trim() : value, {
    lineWidth: 0,
    version: '1.2',
    defaultStringType: 'PLAIN',
  }).trimEnd();
