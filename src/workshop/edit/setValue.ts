/** Writes a value at its place. A key that is missing in a map that is there gets a line of its own behind the others. */
import { isMap, isPair, isScalar, stringify, type YAMLMap } from 'yaml';
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
  if (node !== null) return null;
  const map = nodeAt(tree, path.slice(0, -1));
  return isMap(map) && map.items.length > 0 ? addKey(text, map, `${path.at(-1)}: ${written}`) : null;
}

/** In quotes only where it has to be; always on one line. */
const asWritten = (value: string | number): string =>
  stringify(typeof value === 'string' ? value.replace(/\s+/g, ' ').trim() : value, {
    lineWidth: 0,
    version: '1.2',
    defaultStringType: 'PLAIN',
  }).trimEnd();

function addKey(text: string, map: YAMLMap, line: string): TextChange | null {
  const last = map.items[map.items.length - 1];
  const first = map.items[0];
  const key = isPair(first) && isScalar(first.key) ? first.key.range : null;
  const value = isPair(last) ? (last.value as { range?: readonly number[] } | null) : null;
  if (!key || !value?.range) return null;
  const end = value.range[1];
  if (map.flow) return { from: end, to: end, insert: `, ${line}` };
  const column = key[0] - (text.lastIndexOf('\n', key[0] - 1) + 1);
  const at = text[end - 1] === '\n' ? end : endOfLine(text, end);
  const lead = text[at - 1] === '\n' ? '' : '\n';
  return { from: at, to: at, insert: `${lead}${' '.repeat(column)}${line}${lead === '' ? '\n' : ''}` };
}

function endOfLine(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  return end < 0 ? text.length : end;
}
