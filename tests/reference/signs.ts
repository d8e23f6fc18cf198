/** The table of signs run on one car, and what it may say: for one test file a car, so that two processors share the work. */
import { readFileSync } from 'node:fs';
import { signTableSchema } from '../../shared/schema/signTable';
import { judgeRow, type SignJudged } from '../../src/plant/signs/judgeSigns';
import type { SignRow } from '../../src/plant/signs/signTable';

export interface BentSign {
  readonly vehicle: string;
  readonly row: string;
  readonly channel: string;
  readonly reason: string;
}

const readJson = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));

export const rows = signTableSchema.parse(readJson('./signTable.json')).rows as readonly SignRow[];
export const bentSigns = (readJson('./bentSigns.json') as { readonly bent: readonly BentSign[] }).bent;

export interface CarJudged {
  readonly counted: readonly SignJudged[];
  readonly shown: readonly SignJudged[];
  readonly bent: readonly SignJudged[];
}

export function judgeCar(vehicle: string): CarJudged {
  const signs = rows.flatMap((row) => judgeRow(vehicle, row).signs);
  const counted = signs.filter((sign) => sign.counted);
  return {
    counted,
    shown: counted.filter(({ verdict }) => verdict === 'shown'),
    bent: signs.filter(({ verdict }) => verdict === 'bent'),
  };
}

/** Rows and channels that came out bent, once each. */
export const placesOf = (signs: readonly SignJudged[]): readonly string[] =>
  [...new Set(signs.map(({ row, channel }) => `${row}: ${channel}`))].sort();
