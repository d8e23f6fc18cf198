/** Which tests carry the information, what a good way costs, what each hint gives away. */
import type { HintWorth, Proof } from '../../../prover/proof';
import { word } from '../../../words/words';
import { type Leaf, leaf, pairs } from '../../card/leaf';
import { causeName, listed, percent, seedsText, spreadText, tenths, testName, whole } from '../written';
import { tableLeaf } from './tableLeaf';

export function worthSection({ worth }: Proof): Leaf[] {
  if (worth === null) return [];
  const heads = [word('prove.worth.test'), word('prove.worth.nats'), word('prove.worth.taken')];
  const rows = worth.tests.map(({ test, nats, taken }) => [testName(test), tenths(nats), seedsText(taken)]);
  return [
    leaf(
      'section',
      'worth',
      leaf('h2', '', word('prove.worth.title')),
      leaf('p', 'small', word('prove.worth.about')),
      tableLeaf(heads, rows),
      leaf('p', '', word('prove.worth.cost', { spread: spreadText(worth.costMinutes) })),
      pairs(
        worth.hints.map((hint) => [word('prove.worth.hint', { level: String(hint.level) }), hintText(hint)]),
      ),
    ),
  ];
}

function hintText({ names, tests, shareBefore, shareAfter }: HintWorth): string {
  const cause =
    names.length === 0
      ? word('prove.worth.hintNothing')
      : word('prove.worth.hintNames', { names: listed(names.map(causeName)) });
  if (tests.length === 0) return `${cause}; ${word('prove.worth.hintNoTest')}`;
  const share = { from: percent(shareBefore), to: percent(shareAfter), count: whole(tests.length) };
  return `${cause}; ${word('prove.worth.hintTests', share)}`;
}
