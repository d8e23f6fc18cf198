/** A file fits in a head: 300 lines at most. */
import type { Rule } from '../sourceFile';

export const MOST_LINES = 300;

export const fileSize: Rule = {
  name: 'file size',
  check({ path, text }) {
    const lines = text.replace(/\n$/, '').split('\n').length;
    return lines > MOST_LINES
      ? [{ path, line: MOST_LINES, what: `${lines} lines; ${MOST_LINES} are the most` }]
      : [];
  },
};
