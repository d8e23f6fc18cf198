/** A file fits in a head: 300 lines at most. Generated lists of word ids are nobody's to read. */
import type { Rule } from '../sourceFile';

export const MOST_LINES = 300;
const GENERATED = 'src/words/ids/';

export const fileSize: Rule = {
  name: 'file size',
  check({ path, text }) {
    if (path.startsWith(GENERATED)) return [];
    const lines = text.replace(/\n$/, '').split('\n').length;
    return lines > MOST_LINES
      ? [{ path, line: MOST_LINES, what: `${lines} lines; ${MOST_LINES} are the most` }]
      : [];
  },
};
