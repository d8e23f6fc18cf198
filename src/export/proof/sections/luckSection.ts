/** What luck passes: the lazy players one by one. */
import type { Proof } from '../../../prover/proof';
import { word } from '../../../words/words';
import { type Leaf, leaf } from '../../card/leaf';
import { playerName, spanText, whole } from '../written';
import { tableLeaf } from './tableLeaf';

export function luckSection({ luck }: Proof): Leaf {
  const heads = [
    word('prove.luck.player'),
    word('prove.luck.looks'),
    word('prove.luck.passed'),
    word('prove.luck.scores'),
  ];
  const rows = luck.map(({ player, isBlind, passed, seeds, scores }) => [
    playerName(player),
    isBlind ? word('prove.luck.atNothing') : word('prove.luck.atOne'),
    word('prove.luck.of', { passed: whole(passed.length), seeds: whole(seeds.length) }),
    spanText(scores),
  ]);
  return leaf(
    'section',
    'luck',
    leaf('h2', '', word('prove.luck.title')),
    leaf('p', 'small', word('prove.luck.about')),
    tableLeaf(heads, rows),
  );
}
