/**
 * `signs`: runs a table of signs by fault on every car and says which the model shows, which it bends and why, which do
 * not apply. The share is that of the signs which are counted at severity 0.6, in rows that can fail; `otherSigns` are those
 * counted besides. 1 where a car shows less than nine in ten of the share.
 */
import { signTableSchema } from '../../../shared/schema/signTable';
import { bentSigns } from '../../faults/bentSigns';
import { faultIds } from '../../faults/registry';
import { vehicleIds } from '../../loop/car/vehicles';
import { doesApply, judgeRow, type RowJudged, type SignJudged } from '../../plant/signs/judgeSigns';
import type { SignRow } from '../../plant/signs/signTable';
import { word } from '../../words/words';
import { defineVerb, UsageError } from '../verb';

const OWN_TABLE = 'tests/reference/signTable.json';
const PERCENT = 100;
const ENOUGH_PERCENT = 90;

export default defineVerb({
  name: 'signs',
  summary: 'signs.summary',
  options: {
    json: { kind: 'flag', summary: 'cli.json' },
    vehicle: { kind: 'text', summary: 'signs.vehicle', example: 'ID', many: true },
    row: { kind: 'text', summary: 'signs.row', example: '"ROW"', many: true },
  },
  operands: [{ name: 'TABLE', required: false }],
  run({ options, operands: [file = OWN_TABLE] }, io) {
    const rows = chosen(read(file, io.readFile(file)), options.row);
    const cars = options.vehicle.length > 0 ? options.vehicle : vehicleIds;
    const unknown = cars.find((id) => !vehicleIds.includes(id));
    if (unknown !== undefined)
      throw new UsageError(word('signs.unknownVehicle', { id: unknown, known: vehicleIds.join(', ') }));
    const vehicles = cars.map((vehicle) => {
      io.note(word('signs.running', { vehicle }));
      return summed(
        vehicle,
        rows.map((row) => judgeRow(vehicle, row)),
      );
    });
    io.json({ table: file, vehicles });
    return vehicles.some(({ shownPercent }) => shownPercent < ENOUGH_PERCENT) ? 1 : 0;
  },
});

function summed(vehicle: string, rows: readonly RowJudged[]) {
  const signs = rows.flatMap((row) => row.signs);
  const counted = signs.filter((sign) => sign.counted && doesApply(sign));
  const shown = counted.filter(({ verdict }) => verdict === 'shown');
  const share = counted.filter(({ inShare }) => inShare);
  const shownOfShare = shown.filter(({ inShare }) => inShare);
  return {
    vehicle,
    signs: share.length,
    shownSigns: shownOfShare.length,
    shownPercent: share.length === 0 ? PERCENT : Math.floor((PERCENT * shownOfShare.length) / share.length),
    otherSigns: counted.length - share.length,
    otherShownSigns: shown.length - shownOfShare.length,
    shown: shown.map(brief),
    bent: signs
      .filter(({ verdict }) => verdict === 'bent')
      .map((sign) => ({ ...brief(sign), reason: reasonOf(vehicle, sign) })),
    faint: signs.filter(({ verdict }) => verdict === 'faint').map(brief),
    notApplicable: [
      ...rows.flatMap(({ row, notApplicable }) =>
        notApplicable === null ? [] : [{ row, why: notApplicable }],
      ),
      ...signs.filter((sign) => !doesApply(sign)).map((sign) => ({ ...brief(sign), why: sign.verdict })),
    ],
  };
}

/** As listed; null for one that is not, such as a row of another table. */
function reasonOf(vehicle: string, { row, channel, ambientC }: SignJudged): string | null {
  const listed = bentSigns.find(
    (bent) =>
      bent.vehicle === vehicle &&
      bent.row === row &&
      bent.channel === channel &&
      bent.ambientsC.includes(ambientC),
  );
  return listed?.reason ?? null;
}

const brief = ({ row, severity, ambientC, channel, printed, found }: SignJudged) => ({
  row,
  severity,
  ambientC,
  channel,
  printed,
  found,
});

function chosen(rows: readonly SignRow[], names: readonly string[]): readonly SignRow[] {
  const unknown = names.find((name) => !rows.some(({ row }) => row === name));
  if (unknown !== undefined)
    throw new UsageError(
      word('signs.unknownRow', { row: unknown, known: rows.map(({ row }) => row).join('; ') }),
    );
  return names.length === 0 ? rows : rows.filter(({ row }) => names.includes(row));
}

function read(file: string, text: string): readonly SignRow[] {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    throw new UsageError(word('signs.badTable', { file, reason: (error as Error).message }));
  }
  const result = signTableSchema.safeParse(data);
  if (!result.success) {
    const { path, message } = result.error.issues[0];
    throw new UsageError(word('signs.badTable', { file, reason: `${path.join('.')}: ${message}` }));
  }
  const rows = result.data.rows as readonly SignRow[];
  const unknown = rows.find(({ fault }) => !faultIds.includes(fault));
  if (unknown === undefined) return rows;
  const { row, fault } = unknown;
  throw new UsageError(word('signs.unknownFault', { file, row, fault, known: faultIds.join(', ') }));
}
