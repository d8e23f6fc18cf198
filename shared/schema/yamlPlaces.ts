/** Where nodes of a parsed file stand in its text: a line, a column and how much of that line. */
import { isNode, type LineCounter } from 'yaml';
import type { YamlPlace } from './readYaml.ts';

export interface PlacesIn {
  /** Of the node, or of what of it stands on its first line. */
  (node: unknown): YamlPlace;
  /** Of `part` in a node that stands on one line. */
  readonly part: (node: unknown, part: string) => YamlPlace | undefined;
}

export function placesIn(text: string, lines: LineCounter): PlacesIn {
  const placeOf = (from: number, to: number): YamlPlace => {
    const { line, col } = lines.linePos(from);
    const end = text.indexOf('\n', from);
    const most = (end < 0 ? text.length : end) - from;
    return { line, column: col, length: Math.max(0, Math.min(most, to - from)) };
  };
  const whole = (node: unknown): YamlPlace => {
    if (!isNode(node) || !node.range) return { line: 1, column: 1, length: 0 };
    return placeOf(node.range[0], node.range[1]);
  };
  const part = (node: unknown, wanted: string): YamlPlace | undefined => {
    if (!isNode(node) || !node.range) return undefined;
    const [from, to] = node.range;
    const written = text.slice(from, to);
    const at = written.includes('\n') ? -1 : wordIn(written, wanted);
    return at < 0 ? undefined : placeOf(from + at, from + at + wanted.length);
  };
  return Object.assign(whole, { part });
}

/** Where `wanted` stands in `written` as a word of its own; -1 where it stands nowhere, or more than once. */
function wordIn(written: string, wanted: string): number {
  if (wanted === '') return -1;
  const found: number[] = [];
  for (let at = written.indexOf(wanted); at >= 0; at = written.indexOf(wanted, at + 1)) {
    if (!isInWord(written[at - 1]) && !isInWord(written[at + wanted.length])) found.push(at);
  }
  return found.length === 1 ? found[0] : -1;
}

const isInWord = (letter: string | undefined): boolean => letter !== undefined && /[\p{L}\d_-]/u.test(letter);
