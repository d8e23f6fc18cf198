/**
 * A plan: what a person does, line by line. A line is a command in words (`couple charging port-b over,fender`), the same
 * with names (`couple: { hose: charging, port: port-b, route: [over, fender] }`), or a wait (`run-on: 1 min`, with
 * `times`). `repeat` stands for its lines, `times` over. What the words mean is read by the session; here is the form.
 */
import { z } from 'zod';
import { picked } from './picked.ts';
import { WAITS, type Wait } from './waits.ts';

/** Those of a scenario: the author's, one in a hurry, and none. */
export const PLANS = ['solution', 'careless', 'nothing'] as const;

const argument = z.union([z.string().max(200), z.number(), z.array(z.string().max(60)).max(20)]);
const namedCommand = z
  .record(z.string().min(1).max(40), z.record(z.string().min(1).max(40), argument))
  .refine((line) => Object.keys(line).length === 1, { message: 'a line holds one command' });
const wait = z.strictObject({ 'run-on': z.enum(WAITS), times: z.int().min(1).max(200).optional() });

/** One thing that is done or waited for. */
export type SingleLine =
  | string
  | { readonly 'run-on': Wait; readonly times?: number | undefined }
  | Readonly<Record<string, Readonly<Record<string, string | number | readonly string[]>>>>;

export interface RepeatedLines {
  readonly repeat: readonly SingleLine[];
  readonly times: number;
}
export type PlanLine = SingleLine | RepeatedLines;

const has = (line: unknown, key: string): boolean => typeof line === 'object' && line !== null && key in line;

const words = z.string().min(1).max(200);
const single = picked<SingleLine>(
  (given) => {
    if (typeof given === 'string') return words;
    return has(given, 'run-on') ? wait : namedCommand;
  },
  [words, wait, namedCommand],
);
const repeated = z.strictObject({ repeat: z.array(single).min(1).max(20), times: z.int().min(1).max(200) });
const line = picked<PlanLine>((given) => (has(given, 'repeat') ? repeated : single), [repeated, single]);

export const planLinesSchema = z.array(line).max(400);
export const planFileSchema = z.strictObject({ schema: z.literal(1), lines: planLinesSchema });
