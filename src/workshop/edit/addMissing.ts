/** Writes what a text does not hold yet, with the groups around it that it does not hold either, in the order of the form. */
import { isMap, isPair, isScalar, type Node, type Pair, type YAMLMap } from 'yaml';
import { scenarioSchema } from '../../../shared/schema/scenario';
import { isOptional, type SchemaPart } from '../../../shared/schema/schemaPart';
import type { TextChange } from './changes';
import { nodeAt, type Path, type Tree } from './tree';

const INDENT = '  ';

/** `lines`: what follows the colon, and the lines beneath it. Null where there is no place for it. */
export function addMissing(
  text: string,
  tree: Tree,
  path: Path,
  lines: readonly string[],
): TextChange | null {
  const key = path.at(-1);
  if (typeof key !== 'string') return null;
  const [value, ...beneath] = lines;
  return addTo(text, tree, path.slice(0, -1), key, [`${key}:${value}`, ...beneath]);
}

/** Keys of one group together, where it holds none of them. */
export function addGroup(text: string, tree: Tree, path: Path, entry: readonly string[]): TextChange | null {
  const node = nodeAt(tree, path);
  return node === null
    ? addMissing(text, tree, path, ['', ...entry.map((line) => INDENT + line)])
    : fill(text, node, path.length * INDENT.length, entry);
}

function addTo(
  text: string,
  tree: Tree,
  around: Path,
  key: string,
  entry: readonly string[],
): TextChange | null {
  const map = nodeAt(tree, around);
  if (isMap(map) && map.items.length > 0)
    return addEntry(text, map, keysOf(around).indexOf(key), around, entry);
  if (map === null && around.length === 0) return fill(text, null, 0, entry);
  return addGroup(text, tree, around, entry);
}

/** In the order of the form. */
function keysOf(path: Path): readonly string[] {
  let part = scenarioSchema as unknown as SchemaPart | undefined;
  for (const step of path) {
    const next: SchemaPart | undefined = typeof step === 'number' ? part?.element : part?.shape?.[step];
    part = next && isOptional(next) ? next.unwrap?.() : next;
  }
  return Object.keys(part?.shape ?? {});
}

/** Into a page or group that holds nothing. */
function fill(text: string, node: Node | null, column: number, entry: readonly string[]): TextChange | null {
  const lines = indented(entry, column);
  if (column === 0 && !isMap(node)) {
    const lead = text === '' || text.endsWith('\n') ? '' : '\n';
    return { from: text.length, to: text.length, insert: `${lead}${lines}\n` };
  }
  const isEmpty = isMap(node) || (isScalar(node) && node.value === null);
  if (!isEmpty || !node?.range) return null;
  return { from: node.range[0], to: node.range[1], insert: column === 0 ? lines : `\n${lines}` };
}

/** Behind the last of those that come before it; what the form does not know comes last. */
function addEntry(
  text: string,
  map: YAMLMap,
  rank: number,
  path: Path,
  entry: readonly string[],
): TextChange | null {
  const first = startOf(map.items[0]);
  if (first === null) return null;
  if (map.flow) {
    const end = endOf(map.items[map.items.length - 1]);
    return entry.length > 1 || end === null ? null : { from: end, to: end, insert: `, ${entry[0]}` };
  }
  const lines = indented(entry, first - (text.lastIndexOf('\n', first - 1) + 1));
  const order = keysOf(path);
  const before = map.items.findLastIndex(
    ({ key }) => rank < 0 || (isScalar(key) && order.indexOf(String(key.value)) < rank),
  );
  if (before < 0) return { from: first, to: first, insert: `${lines.trimStart()}\n${columnOf(text, first)}` };
  const end = endOf(map.items[before]);
  if (end === null) return null;
  const at = text[end - 1] === '\n' ? end : endOfLine(text, end);
  const lead = text[at - 1] === '\n' ? '' : '\n';
  return { from: at, to: at, insert: `${lead}${lines}${lead === '' ? '\n' : ''}` };
}

const indented = (entry: readonly string[], column: number): string =>
  entry.map((line) => ' '.repeat(column) + line).join('\n');

const columnOf = (text: string, at: number): string => ' '.repeat(at - (text.lastIndexOf('\n', at - 1) + 1));

const startOf = (item: Pair): number | null =>
  isScalar(item.key) && item.key.range ? item.key.range[0] : null;

/** Of its value, or of its key where it has none. */
function endOf(item: Pair): number | null {
  if (!isPair(item)) return null;
  const { range } = (item.value ?? item.key) as { readonly range?: readonly number[] | null };
  return range?.[1] ?? null;
}

function endOfLine(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  return end < 0 ? text.length : end;
}
