/** Suspects against the tests of this bench, a few tests to a table, and the pairs that none of them parts. */
import type { ApartTable, Pair } from '../../../prover/apartTable';
import type { Proof } from '../../../prover/proof';
import type { WriteQuantity } from '../../../session/writeQuantity';
import { word } from '../../../words/words';
import { type Leaf, leaf } from '../../card/leaf';
import {
  causeName,
  HARD_SPACE,
  percent,
  readingText,
  tenths,
  testName,
  testNameWithTime,
  toolName,
} from '../written';
import { tableLeaf } from './tableLeaf';

/** Columns that fit on a printed page. */
const COLUMNS = 7;
/** Of a suspect that was told from all others before. */
const NOT_READ = '·';

export function apartSections({ apart, own }: Proof, write: WriteQuantity): Leaf[] {
  if (apart === null) return [];
  return [
    leaf(
      'section',
      'apart',
      leaf('h2', '', word('prove.apart.title')),
      leaf('p', 'small', word('prove.apart.about', { seed: String(apart.seed) })),
      ...readings(apart, own, write),
    ),
    leaf('section', 'alike', leaf('h2', '', word('prove.apart.pairsTitle')), ...pairsOf(apart, write)),
  ];
}

function readings({ states, tests, rows }: ApartTable, own: readonly string[], write: WriteQuantity): Leaf[] {
  const here = tests.flatMap(({ isOnBench }, at) => (isOnBench ? [at] : []));
  const lots = Array.from({ length: Math.ceil(here.length / COLUMNS) }, (_, lot) =>
    here.slice(lot * COLUMNS, (lot + 1) * COLUMNS),
  );
  return lots.map((lot) =>
    tableLeaf(
      [word('prove.apart.suspect'), ...lot.map((at) => testNameWithTime(tests[at].id))],
      rows.map(({ cause, severity, stages, shows }) => [
        suspectText(cause, severity, own.includes(cause)),
        ...lot.map((at) =>
          states.indexOf(tests[at].state) < stages
            ? readingText(shows[at], tests[at].unit, tests[at].id, write)
            : NOT_READ,
        ),
      ]),
    ),
  );
}

function suspectText(cause: string, severity: number, isOwn: boolean): string {
  const name = isOwn ? word('prove.apart.own', { cause: causeName(cause) }) : causeName(cause);
  return severity === 0
    ? name
    : word('prove.apart.severity', { cause: name, severity: percent(severity).replace(' ', HARD_SPACE) });
}

function pairsOf({ tests, pairs }: ApartTable, write: WriteQuantity): Leaf[] {
  if (pairs.length === 0) return [leaf('p', '', word('prove.apart.pairsNone'))];
  const heads = [
    word('prove.apart.pair'),
    word('prove.apart.work'),
    word('prove.apart.best'),
    word('prove.apart.would'),
  ];
  const unitOf = new Map(tests.map(({ id, unit }) => [id, unit]));
  return [
    leaf('p', 'small', word('prove.apart.pairsAbout')),
    tableLeaf(
      heads,
      pairs.map((pair) => [
        `${causeName(pair.a)} / ${causeName(pair.b)}`,
        pair.decisionDiffers ? word('prove.apart.workOther') : word('prove.apart.workSame'),
        bestText(pair),
        wouldText(pair, unitOf, write),
      ]),
    ),
  ];
}

const bestText = ({ best }: Pair): string =>
  best === null
    ? word('prove.nobody')
    : word('prove.apart.bestText', { test: testName(best.test), spreads: tenths(best.spreads) });

function wouldText({ wouldTell }: Pair, unitOf: ReadonlyMap<string, string>, write: WriteQuantity): string {
  if (wouldTell === null) return word('prove.apart.none');
  const { test, tool, shows } = wouldTell;
  const [a, b] = shows.map((value) => readingText(value, unitOf.get(test) ?? '', test, write));
  return word('prove.apart.wouldText', { test: testName(test), tool: toolName(tool), a, b });
}
