/** A table of a printed page: what stands over its columns, and rows that begin with their name. */
import { type Leaf, leaf } from '../../card/leaf';

export const tableLeaf = (heads: readonly string[], rows: readonly (readonly string[])[]): Leaf =>
  leaf(
    'div',
    'wide',
    leaf(
      'table',
      '',
      leaf('thead', '', leaf('tr', '', ...heads.map((head) => leaf('th', '', head)))),
      leaf(
        'tbody',
        '',
        ...rows.map(([name, ...cells]) =>
          leaf('tr', '', leaf('th', '', name), ...cells.map((cell) => leaf('td', '', cell))),
        ),
      ),
    ),
  );
