/**
 * What one place allows whom: for each act the persons who may do it, the rule it follows from, where that was read and
 * how far it may be trusted. Rules change, so a reader is always told to check the current one. `known` is off for the
 * place that is none: there the strictest of the others is given as advice.
 */
import { z } from 'zod';
import { PERSONS, type Person } from './persons.ts';

/** In the order in which a job meets them. */
export const ACTS = [
  'service',
  'buy-can',
  'charge',
  'top-up',
  'fill-leaking',
  'recover',
  'handle-r12',
  'convert',
  'change-gas',
] as const;
export type Act = (typeof ACTS)[number];

/** The text itself was read, a digest of it was read, or it is from memory. */
const TRUSTS = ['read', 'second-hand', 'memory'] as const;
export type Trust = (typeof TRUSTS)[number];

export interface Permission {
  readonly who: readonly Person[];
  readonly rule: string;
  readonly source: string;
  readonly trust: Trust;
  /** The rule forbids only that: who puts in a gas of no more warming falls under `charge`. */
  readonly against?: 'more-warming' | undefined;
}

export interface Jurisdiction {
  readonly id: string;
  readonly known: boolean;
  readonly acts: Readonly<Record<Act, Permission>>;
}

const permission = z.strictObject({
  who: z.array(z.enum(PERSONS)),
  rule: z.string().trim().min(1).max(200),
  source: z.string().trim().min(1).max(200),
  trust: z.enum(TRUSTS),
  against: z.literal('more-warming').optional(),
});

export const jurisdictionSchema = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/, 'an id is small letters and single hyphens'),
  known: z.boolean(),
  acts: z.strictObject(Object.fromEntries(ACTS.map((act) => [act, permission]))),
});
