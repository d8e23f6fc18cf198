/** The table of signs by fault, sign by sign, on every car. */
import { SIGN_CHANNELS } from '../../../../shared/schema/signWords';
import { doesApply, judgeRow, type SignJudged } from '../../../plant/signs/judgeSigns';
import type { SignChannel, SignRow } from '../../../plant/signs/signTable';
import { say, word } from '../../../words/words';
import type { ReportInputs } from '../inputs';
import { type ReportSection, table } from '../page';

const ARROWS = { up: '↑', down: '↓', same: '=' } as const;

/** Signs are judged on the shipped cars, by id: the table is about them. */
export function signSection({ vehicles, printed }: ReportInputs): ReportSection {
  return {
    id: 'signs',
    title: word('report.signs.title'),
    about: word('report.signs.about'),
    source: word('report.source', { source: printed.signs.about }),
    figures: vehicles.map(({ id }) => signTableOf(id, printed.signs.rows)),
  };
}

function signTableOf(vehicle: string, rows: readonly SignRow[]): string {
  const judged = rows.map((row) => judgeRow(vehicle, row, 'counted'));
  const counted = judged.flatMap(({ signs }) => signs.filter((sign) => sign.inShare && doesApply(sign)));
  const shown = counted.filter(({ verdict }) => verdict === 'shown').length;
  const heads = [vehicle, ...SIGN_CHANNELS.map((channel) => say({ id: `report.channel.${channel}` })), ''];
  const lines = judged.map(({ row, notApplicable, signs }) =>
    notApplicable !== null
      ? [row, ...SIGN_CHANNELS.map(() => '·'), word('report.signs.notApplicable')]
      : [row, ...SIGN_CHANNELS.map((channel) => cellOf(signs, channel)), sourceOf(rows, row)],
  );
  const sum = word('report.signs.sum', { shown: String(shown), counted: String(counted.length) });
  return `${table(heads, lines)}<figcaption>${sum}</figcaption>`;
}

/** What was found at each weather at the counted severity; in brackets where it is bent, · where it does not apply. */
function cellOf(signs: readonly SignJudged[], channel: SignChannel): string {
  const here = signs.filter((sign) => sign.counted && sign.channel === channel);
  return here
    .map((sign) => {
      if (!doesApply(sign)) return '·';
      return sign.verdict === 'shown' ? ARROWS[sign.found] : `(${ARROWS[sign.found]})`;
    })
    .join(' ');
}

const sourceOf = (rows: readonly SignRow[], name: string): string =>
  rows.find(({ row }) => row === name)?.source ?? '';
