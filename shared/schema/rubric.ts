/**
 * A rubric: rules in five forms and nothing else. Each rule belongs to a domain, is worth points there, and has a
 * severity for when it is broken. `needs` says when it has anything to say at all: a rule whose `needs` never came true
 * earns nothing and accuses nobody. `asked` says whether it is a question here at all: a rule whose `asked` never came true
 * has no points to be had or lost; a deed that would have broken it is told as advice. A hazard has `asked`, so that nobody
 * earns by doing nothing or loses by staying away from it; what a job asks for has `needs`. `gate` marks what the job is
 * about: who breaks it seriously has not passed, whatever else went well. `quotes` names the signals and
 * measures its sentence quotes, by placeholder.
 *
 * A sentence stands in the words as `rules.<id>.kept`, `.broken`, `.idle`, `.advised` (or `.told` for all), and a plain
 * reason as `rules.<id>.why`.
 */
import { z } from 'zod';
import { type Condition, conditionSchema } from './condition.ts';
import { DOMAINS, type Domain } from './domains.ts';
import { byKey } from './picked.ts';
import { quantity } from './quantity.ts';

export const SEVERITIES = ['critical', 'serious', 'minor'] as const;
export type Severity = (typeof SEVERITIES)[number];

interface RuleBase {
  readonly id: string;
  readonly domain: Domain;
  readonly points: number;
  readonly severity: Severity;
  readonly needs?: Condition | undefined;
  readonly asked?: Condition | undefined;
  readonly gate?: boolean | undefined;
  readonly quotes: Readonly<Record<string, string>>;
  readonly references: readonly string[];
  readonly tasks?: readonly string[] | undefined;
}
export type Form =
  | { readonly never: Condition }
  | { readonly done: Condition }
  | { readonly before: { readonly first: Condition; readonly then: Condition } }
  | { readonly while: { readonly condition: Condition; readonly during: Condition; readonly for: string } }
  | {
      readonly outcome: {
        readonly measure: string;
        readonly full: string | number;
        readonly zero: string | number;
      };
    };
export type Rule = RuleBase & Form;

export interface Rubric {
  readonly id: string;
  readonly rules: readonly Rule[];
}

const id = z.string().regex(/^[a-z][a-zA-Z0-9]*$/, 'an id is letters and digits, small letter first');
/** Ids of our own for what a rule or a scenario rehearses: a group A to E and a number. */
export const taskId = z.string().regex(/^[A-E]\d{1,2}$/, 'a task id is a letter A to E and a number');
const amount = z.union([z.string().min(1).max(40), z.number()]);
const base = {
  id,
  domain: z.enum(DOMAINS),
  points: z.number().positive().max(25),
  severity: z.enum(SEVERITIES),
  needs: conditionSchema.optional(),
  asked: conditionSchema.optional(),
  gate: z.boolean().optional(),
  quotes: z.record(id, z.string().min(1)).refine((quotes) => Object.keys(quotes).length > 0, {
    message: 'a rule quotes at least one signal or measure',
  }),
  references: z.array(z.string().min(1)).min(1),
  tasks: z.array(taskId).optional(),
};

export const ruleSchema: z.ZodType<Rule> = byKey<Rule>({
  never: z.strictObject({ ...base, never: conditionSchema }),
  done: z.strictObject({ ...base, done: conditionSchema }),
  before: z.strictObject({
    ...base,
    before: z.strictObject({ first: conditionSchema, then: conditionSchema }),
  }),
  while: z.strictObject({
    ...base,
    while: z.strictObject({
      condition: conditionSchema,
      during: conditionSchema,
      for: quantity('time', { min: 0, max: 7200 }),
    }),
  }),
  outcome: z.strictObject({
    ...base,
    outcome: z.strictObject({ measure: z.string().min(1), full: amount, zero: amount }),
  }),
});

export const rubricSchema = z.strictObject({ id, rules: z.array(ruleSchema).min(1).max(80) });
