/** What the reader of YAML could not read, told where the slip is: most often a line that is indented wrongly. */
import type { LineCounter, YAMLParseError, YAMLWarning } from 'yaml';
import { indentSlip } from './indentSlip.ts';
import { YamlError } from './readYaml.ts';

export function slipOf(
  file: string,
  text: string,
  problem: YAMLParseError | YAMLWarning,
  counter: LineCounter,
): YamlError {
  const code = codeOf(problem);
  const slip = ABOUT_LAYOUT.has(code) ? indentSlip(text) : null;
  if (slip) {
    const way = slip.indent > slip.wanted ? 'too far' : 'too little';
    const said = `indented ${way}: ${slip.indent} spaces where the lines beside it have ${slip.wanted}`;
    const at = { line: slip.line, column: 1, length: slip.indent };
    const fix = { at, to: ' '.repeat(slip.wanted) };
    return new YamlError(`${file}:${slip.line}:${slip.indent + 1}`, code, said, fix);
  }
  const { line, col } = counter.linePos(problem.pos[0]);
  const hint = ABOUT_LAYOUT.has(code) ? HINT : '';
  return new YamlError(`${file}:${line}:${col}`, code, `${problem.message}${hint}`);
}

/** The parser's own code in our form: `DUPLICATE_KEY` -> `duplicate-key`. */
const codeOf = (problem: { readonly code: string }): string =>
  problem.code.toLowerCase().replaceAll('_', '-');

const ABOUT_LAYOUT = new Set([
  'bad-indent',
  'unexpected-token',
  'block-as-implicit-key',
  'multiline-implicit-key',
  'impossible',
  'missing-char',
]);
const HINT = '; look at the indentation here: what belongs together begins in one column';
