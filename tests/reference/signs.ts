/** The table of signs run on one car, and what it may say: for one test file a car, so that two processors share the work. */
import { readFileSync } from 'node:fs';
import { signTableSchema } from '../../shared/schema/signTable';
import { bentSigns } from '../../src/faults/bentSigns';
import { doesApply, judgeRow, type SignJudged } from '../../src/plant/signs/judgeSigns';
import type { SignRow } from '../../src/plant/signs/signTable';

const readJson = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));

export const rows = signTableSchema.parse(readJson('./signTable.json')).rows as readonly SignRow[];

interface Place {
  readonly vehicle: string;
  readonly row: string;
  readonly channel: string;
  readonly reason: string;
}
/** Readings that turn back on the way to the worst, with the reason. */
export const turning = (readJson('./turningSigns.json') as { readonly turning: readonly Place[] }).turning;

export interface CarJudged {
  /** Applicable at severity 0.6, in rows that can fail. */
  readonly share: readonly SignJudged[];
  readonly shown: readonly SignJudged[];
  readonly all: readonly SignJudged[];
}

export function judgeCar(vehicle: string): CarJudged {
  const all = rows.flatMap((row) => judgeRow(vehicle, row).signs);
  const share = all.filter((sign) => sign.inShare && doesApply(sign));
  return {
    all,
    share,
    shown: share.filter(({ verdict }) => verdict === 'shown'),
  };
}

const placeOf = (row: string, channel: string, ambientC: number): string =>
  `${row}: ${channel} at ${ambientC} °C`;

/** Every row, channel and weather that is listed as bent on a car; `counted`: at the severity that counts. */
export const listedOn = (vehicle: string, which: 'all' | 'counted'): readonly string[] =>
  bentSigns
    .filter((bent) => bent.vehicle === vehicle && (which === 'all' || bent.only === undefined))
    .flatMap(({ row, channel, ambientsC }) => ambientsC.map((ambientC) => placeOf(row, channel, ambientC)));

/** Within a tenth of what counts as a change, so that a hair in the physics decides: it may be listed or not. */
const isNear = ({ by, still }: SignJudged): boolean => Math.abs(Math.abs(by) - still) < 0.1 * still;

export function bentIn(signs: readonly SignJudged[]): {
  readonly must: readonly string[];
  readonly may: readonly string[];
} {
  const place = ({ row, channel, ambientC }: SignJudged): string => placeOf(row, channel, ambientC);
  const bent = signs.filter(({ verdict }) => verdict === 'bent');
  return {
    must: [...new Set(bent.filter((sign) => !isNear(sign)).map(place))].sort(),
    may: [...bent, ...signs.filter(isNear)].map(place),
  };
}

/** Rows and channels whose reading, from sound to the worst in one weather, turns back by more than nothing. */
export function turningIn(signs: readonly SignJudged[]): readonly string[] {
  const series = new Map<string, SignJudged[]>();
  for (const sign of signs) {
    if (sign.printed === 'same' || !doesApply(sign)) continue;
    const key = `${sign.row}|${sign.channel}|${sign.ambientC}`;
    series.set(key, [...(series.get(key) ?? []), sign]);
  }
  const found = [...series.values()].filter(turnsBack).map(([{ row, channel }]) => `${row}: ${channel}`);
  return [...new Set(found)].sort();
}

function turnsBack(run: readonly SignJudged[]): boolean {
  const { still } = run[0];
  const values = [0, ...[...run].sort((a, b) => a.severity - b.severity).map(({ by }) => by)];
  const steps = values.slice(1).map((value, i) => value - values[i]);
  return steps.some((step) => step > still) && steps.some((step) => step < -still);
}
