/** How even a scenario is over its seeds. */
import type { Proof } from '../../../prover/proof';
import { word } from '../../../words/words';
import { type Leaf, leaf, pairs } from '../../card/leaf';
import { baysText, spreadText } from '../written';

export function fairSection({ fairness: { scores, costMinutes, unsolvable } }: Proof): Leaf {
  const lost = unsolvable.length === 0 ? word('prove.fair.none') : baysText(unsolvable);
  return leaf(
    'section',
    'fair',
    leaf('h2', '', word('prove.fair.title')),
    pairs([
      [word('prove.fair.scores'), spreadText(scores)],
      ...(costMinutes === null ? [] : [[word('prove.fair.cost'), spreadText(costMinutes)] as const]),
      [word('prove.fair.unsolvable'), lost],
    ]),
  );
}
