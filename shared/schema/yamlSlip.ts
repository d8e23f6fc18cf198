/**
 * What the reader of YAML could not read, told where the slip is. It complains of the line before one that is indented too
 * far, and of the end of a group that is not indented enough; here both are told at the line itself.
 */
import type { LineCounter, YAMLParseError, YAMLWarning } from 'yaml';
import { YamlError } from './readYaml.ts';

export function slipOf(
  file: string,
  text: string,
  problem: YAMLParseError | YAMLWarning,
  counter: LineCounter,
): YamlError {
  const { line, col } = counter.linePos(problem.pos[0]);
  const lines = text.split('\n');
  const deep = tooDeep(lines, line);
  const code = codeOf(problem);
  if (deep !== undefined) {
    const text = `indented too far; begin it under the line above, ${deep.wanted} spaces in`;
    return new YamlError(`${file}:${deep.line}:${deep.column}`, code, text);
  }
  return new YamlError(`${file}:${line}:${col}`, code, `${problem.message}${hintFor(code)}`);
}

/** The parser's own code in our form: `DUPLICATE_KEY` -> `duplicate-key`. */
const codeOf = (problem: { readonly code: string }): string =>
  problem.code.toLowerCase().replaceAll('_', '-');

const hintFor = (code: string): string =>
  code === 'bad-indent' || code === 'unexpected-token'
    ? '; look at the indentation here: what belongs together begins in one column'
    : '';

interface Deep {
  readonly line: number;
  readonly column: number;
  readonly wanted: number;
}

const KEY = /^(\s*(?:- )?)([\w-]+):(\s|$)/;
const indentOf = (line: string): number => line.length - line.trimStart().length;

/** A key under a line that has its value already: from the line complained of, a few lines on. */
function tooDeep(lines: readonly string[], from: number): Deep | undefined {
  for (let at = Math.max(1, from - 1); at < Math.min(lines.length, from + 2); at++) {
    const above = lastWritten(lines, at);
    const [, lead, , rest] = KEY.exec(above) ?? [];
    const own = KEY.exec(lines[at]);
    if (lead === undefined || rest === undefined || own === null) continue;
    const hasValue =
      above
        .slice((KEY.exec(above) as RegExpExecArray)[0].length)
        .replace(/#.*/, '')
        .trim() !== '';
    if (hasValue && indentOf(lines[at]) > lead.length)
      return { line: at + 1, column: indentOf(lines[at]) + 1, wanted: lead.length };
  }
  return undefined;
}

/** The nearest line above that says something. */
function lastWritten(lines: readonly string[], before: number): string {
  for (let at = before - 1; at >= 0; at--) {
    const line = lines[at].trim();
    if (line !== '' && !line.startsWith('#')) return lines[at];
  }
  return '';
}
