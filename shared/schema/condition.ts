/**
 * The condition language of rubrics, deliveries and watches: `all`, `any`, `not`, a comparison of a signal, and "this
 * event happens now". Data only. A value carries its unit in the text (`220 kPa`); a switch is `on` or `off`.
 *
 * `*` in a signal stands for one part of its id; the comparison then holds when it holds for any such signal.
 */
import { z } from 'zod';
import { byKey } from './picked.ts';

export interface Comparison {
  readonly signal: string;
  readonly over?: string | number | undefined;
  readonly under?: string | number | undefined;
  readonly is?: string | number | undefined;
}
export interface EventPattern {
  readonly event: string;
  readonly subject?: string | undefined;
}
export type Condition =
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition }
  | Comparison
  | EventPattern;

const value = z.union([z.string().min(1).max(40), z.number()]);
const signal = z
  .string()
  .regex(/^[a-zA-Z0-9*-]+(\.[a-zA-Z0-9*-]+)*$/, 'a signal id is words joined by points');
const nested = z.lazy(() => conditionSchema);

const comparisonSchema = z
  .strictObject({ signal, over: value.optional(), under: value.optional(), is: value.optional() })
  .refine((c) => [c.over, c.under, c.is].filter((v) => v !== undefined).length === 1, {
    message: 'a comparison has exactly one of over, under, is',
  });

export const conditionSchema: z.ZodType<Condition> = byKey<Condition>({
  all: z.strictObject({ all: z.array(nested).min(1).max(20) }),
  any: z.strictObject({ any: z.array(nested).min(1).max(20) }),
  not: z.strictObject({ not: nested }),
  signal: comparisonSchema,
  event: z.strictObject({ event: z.string().min(1).max(60), subject: z.string().min(1).max(60).optional() }),
});
