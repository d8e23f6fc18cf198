/** Who can solve it, and how: the author's plan, and the way of who asks for information. */
import type { KnowRun } from '../../../prover/knowRun';
import type { Proof } from '../../../prover/proof';
import { word } from '../../../words/words';
import { type Leaf, leaf, list, pairs } from '../../card/leaf';
import { causeName, listed, named, percent, seedsText, spanText, tenths, testName, whole } from '../written';

export function solveSection({ solved: { solution, know } }: Proof): Leaf {
  const author = word('prove.solve.authorText', {
    scores: spanText(solution.scores),
    seeds: seedsText(solution.seeds.length),
  });
  const rows: [string, string][] = [[word('prove.solve.author'), author]];
  if (know !== null) {
    const [right, seeds] = [whole(know.right.length), seedsText(know.seeds.length)];
    rows.push([word('prove.solve.asker'), word('prove.solve.askerText', { right, seeds })]);
  }
  return leaf(
    'section',
    'solve',
    leaf('h2', '', word('prove.solve.title')),
    pairs(rows),
    ...(know === null ? [leaf('p', '', word('prove.solve.nothing'))] : way(know.runs[0])),
  );
}

function way({ seed, costMinutes, trials, claimed, share, charge }: KnowRun): Leaf[] {
  const all = trials.reduce((sum, { nats }) => sum + nats, 0);
  const steps = trials.map((trial) =>
    word('prove.solve.step', {
      tests: listed(trial.tests.map(testName)),
      nats: tenths(trial.nats),
      doubt: percent(all > 0 ? trial.nats / all : 0),
      share: percent(trial.share),
    }),
  );
  const end = {
    cause: causeName(claimed),
    share: percent(share),
    charge: named(`prove.charge.${charge}`, charge),
  };
  return [
    leaf('p', '', word('prove.solve.path', { seed: String(seed), cost: whole(costMinutes) })),
    list('way', steps),
    leaf('p', '', word('prove.solve.end', end)),
  ];
}
