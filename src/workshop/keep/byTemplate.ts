/**
 * A text told by the lines in which it differs from a template, so that what was begun with one fits into a link. First line
 * `@TEMPLATE HASH`; then `=N` takes N lines of the template, `-N` passes N over, `+LINE` is a line of its own. The hash is of
 * the template: another version's is not built upon.
 */
import { hashText } from '../../numerics/hash';

const HEAD = /^@([a-z-]{1,40}) ([0-9a-f]{16})$/;

export function toldByTemplate(text: string, id: string, template: string): string {
  const own = text.split('\n');
  const base = template.split('\n');
  const same = commonLengths(own, base);
  const told: string[] = [`@${id} ${hashText(template)}`];
  let [at, from] = [0, 0];
  while (at < own.length || from < base.length) {
    if (at < own.length && from < base.length && own[at] === base[from]) {
      count(told, '=');
      at += 1;
      from += 1;
    } else if (at < own.length && (from === base.length || same[at + 1][from] >= same[at][from + 1])) {
      told.push(`+${own[at]}`);
      at += 1;
    } else {
      count(told, '-');
      from += 1;
    }
  }
  return told.join('\n');
}

/** Which template a text is told by; null where it stands for itself. */
export const templateIn = (told: string): string | null => HEAD.exec(told.split('\n', 1)[0])?.[1] ?? null;

/** Null where it was told by another version of the template, or is no such text. */
export function fromTemplate(told: string, template: string): string | null {
  const [head, ...lines] = told.split('\n');
  if (HEAD.exec(head)?.[2] !== hashText(template)) return null;
  const base = template.split('\n');
  const own: string[] = [];
  let from = 0;
  for (const line of lines) {
    if (line.startsWith('+')) own.push(line.slice(1));
    else {
      const many = Number(line.slice(1));
      if (!/^[=-]\d{1,5}$/.test(line) || from + many > base.length) return null;
      if (line.startsWith('=')) own.push(...base.slice(from, from + many));
      from += many;
    }
  }
  return own.join('\n');
}

/** Puts one more on a run of the same kind. */
function count(told: string[], kind: '=' | '-'): void {
  const last = told[told.length - 1];
  if (last.startsWith(kind)) told[told.length - 1] = `${kind}${Number(last.slice(1)) + 1}`;
  else told.push(`${kind}1`);
}

/** Length of the longest common sequence of lines from each pair of places on. */
function commonLengths(own: readonly string[], base: readonly string[]): Uint16Array[] {
  const table = Array.from({ length: own.length + 1 }, () => new Uint16Array(base.length + 2));
  for (let i = own.length - 1; i >= 0; i--) {
    for (let j = base.length - 1; j >= 0; j--)
      table[i][j] = own[i] === base[j] ? 1 + table[i + 1][j + 1] : Math.max(table[i + 1][j], table[i][j + 1]);
  }
  return table;
}
