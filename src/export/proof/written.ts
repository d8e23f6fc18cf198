/** Names and numbers as a proof writes them. */
import { writeClock } from '../../instruments/displayUnits';
import { stageSeconds } from '../../prover/forecast/stageSeconds';
import { testName } from '../../prover/forecast/testName';
import type { Spread } from '../../prover/proof';
import { type WriteQuantity, writeMetric } from '../../session/writeQuantity';
import { causesIn } from '../../suspects/causes';
import { formatNumber, formatQuantity } from '../../units/format';
import { isWordId, say, word } from '../../words/words';

/** The word of an id that came as data; the id where there is none. */
export const named = (id: string, otherwise: string): string => (isWordId(id) ? say({ id }) : otherwise);

export const causeName = (suspect: string): string =>
  causesIn(suspect)
    .map((cause) => named(`faults.${cause}.title`, named(`name.cause.${cause}`, cause)))
    .join(' + ');

export { testName };

/** A car at rest changes little; one that runs for long is read when it has settled, some sooner than others. */
const UNTIMED: readonly string[] = ['rest', 'motorway'];

/** With the time that the car has been in that state when it is read. */
export function testNameWithTime(id: string): string {
  const stage = Object.keys(stageSeconds).find((one) => id.endsWith(`.${one}`));
  if (!stage || UNTIMED.includes(stage)) return testName(id);
  const time = writeClock(stageSeconds[stage as keyof typeof stageSeconds]);
  return word('proveTests.after', { test: testName(id), time });
}

export const toolName = (id: string): string => named(`proveTests.tool.${id}`, id);
export const playerName = (id: string): string => named(`lazyPlayers.${id}.name`, id);

/** What a rule asks for and why, behind the id that a file leaves it out by. */
export function ruleText(rule: string | number): string {
  const why = named(`rules.${rule}.why`, '');
  return why === '' ? `${rule}.` : `${rule}: ${why}`;
}

export const HARD_SPACE = '\u00a0';
const LOOKS = ['no', 'yes', 'onAndOff', 'slowly'] as const;

export const whole = (value: number): string => formatNumber(value, 1);
export const tenths = (value: number): string => formatNumber(value, 0.1);
export const percent = (share: number): string => formatQuantity(share, 'percent', 1);

/** A reading of a test, its unit on the same line; what is looked at as `prover/forecast/folded` tells it apart. */
export function readingText(
  value: number | null,
  unit: string,
  test = '',
  write: WriteQuantity = writeMetric,
): string {
  if (value === null) return '–';
  if (unit === 'look') return named(`prove.look.${LOOKS[value]}`, whole(value));
  return (unit === '1' ? percent(value) : write({ source: test, value, unit })).replace(' ', HARD_SPACE);
}

export const spanText = ({ least, most }: Spread): string =>
  least === most ? tenths(least) : word('prove.solve.span', { from: tenths(least), to: tenths(most) });

export const spreadText = ({ least, mean, most }: Spread): string =>
  least === most
    ? tenths(least)
    : word('prove.fair.spread', { least: tenths(least), mean: tenths(mean), most: tenths(most) });

export const seedsText = (count: number): string =>
  count === 1 ? word('prove.solve.seedsOne') : word('prove.solve.seedsMany', { count: whole(count) });

/** Bays by number, three and more in a row as "4–7". */
export function baysText(seeds: readonly number[]): string {
  const rows: [number, number][] = [];
  for (const seed of [...seeds].sort((a, b) => a - b)) {
    const last = rows[rows.length - 1];
    if (last && seed === last[1] + 1) last[1] = seed;
    else rows.push([seed, seed]);
  }
  return listed(
    rows.flatMap(([from, to]): (string | number)[] =>
      to - from > 1 ? [`${from}–${to}`] : to > from ? [from, to] : [from],
    ),
  );
}

export const listed = (values: readonly (string | number)[]): string => values.join(', ');
