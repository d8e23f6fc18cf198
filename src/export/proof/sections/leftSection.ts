/** What was left out to be ready in time. */
import type { Proof } from '../../../prover/proof';
import { word } from '../../../words/words';
import { type Leaf, leaf, list } from '../../card/leaf';
import { named, whole } from '../written';

export function leftSection({ leftOut }: Proof): Leaf {
  const lines = leftOut.map(({ what, asked, done }) =>
    word('prove.left.line', {
      what: named(`prove.left.${what}`, what),
      done: whole(done),
      asked: whole(asked),
    }),
  );
  return leaf(
    'section',
    'left',
    leaf('h2', '', word('prove.left.title')),
    ...(lines.length === 0
      ? [leaf('p', '', word('prove.left.none'))]
      : [list('', lines), leaf('p', 'small', word('prove.left.about'))]),
  );
}
