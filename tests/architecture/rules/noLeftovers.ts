/** Nothing unfinished, switched off or waved through. */
import type { Rule } from '../sourceFile';

/** Written in parts, so that this file does not find itself. */
const MARKS = new RegExp(
  [
    ['TO', 'DO'],
    ['FIX', 'ME'],
    ['@ts-', 'ignore'],
    ['@ts-', 'expect-error'],
    ['@ts-', 'nocheck'],
    ['biome-', 'ignore'],
  ]
    .map((parts) => parts.join(''))
    .concat(String.raw`\b(test|it|describe)\.(skip|only|todo)\b`)
    .join('|'),
);

export const noLeftovers: Rule = {
  name: 'no leftovers',
  check({ path, text }) {
    return text.split('\n').flatMap((row, index) => {
      const mark = MARKS.exec(row);
      return mark ? [{ path, line: index + 1, what: mark[0] }] : [];
    });
  },
};
