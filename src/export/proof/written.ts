/** Names and numbers as a proof writes them. */
import type { Spread } from '../../prover/proof';
import { writeMetric } from '../../session/writeQuantity';
import { causesIn } from '../../suspects/causes';
import { formatNumber, formatQuantity } from '../../units/format';
import { isWordId, say, word } from '../../words/words';

/** The word of an id that came as data; the id where there is none. */
export const named = (id: string, otherwise: string): string => (isWordId(id) ? say({ id }) : otherwise);

export const causeName = (suspect: string): string =>
  causesIn(suspect)
    .map((cause) => named(`faults.${cause}.title`, named(`name.cause.${cause}`, cause)))
    .join(' + ');

export { testName } from '../../prover/forecast/testName';

export const toolName = (id: string): string => named(`proveTests.tool.${id}`, id);
export const playerName = (id: string): string => named(`lazyPlayers.${id}.name`, id);

const LOOKS = ['no', 'yes', 'onAndOff', 'slowly'] as const;

export const whole = (value: number): string => formatNumber(value, 1);
export const tenths = (value: number): string => formatNumber(value, 0.1);
export const percent = (share: number): string => formatQuantity(share, 'percent', 1);

/** A reading in units of the trade; what is looked at as `prover/forecast/folded` tells it apart. */
export function readingText(value: number | null, unit: string): string {
  if (value === null) return '–';
  if (unit === 'look') return named(`prove.look.${LOOKS[value]}`, whole(value));
  return unit === '1' ? percent(value) : writeMetric({ source: '', value, unit });
}

export const spanText = ({ least, most }: Spread): string =>
  least === most ? tenths(least) : word('prove.solve.span', { from: tenths(least), to: tenths(most) });

export const spreadText = ({ least, mean, most }: Spread): string =>
  least === most
    ? tenths(least)
    : word('prove.fair.spread', { least: tenths(least), mean: tenths(mean), most: tenths(most) });

export const seedsText = (count: number): string =>
  count === 1 ? word('prove.solve.seedsOne') : word('prove.solve.seedsMany', { count: whole(count) });

export const listed = (values: readonly (string | number)[]): string => values.join(', ');
