/**
 * A plan: what a person does, line by line. A line is a command in words (`couple charging port-b over,fender`), the same
 * with names (`couple: { hose: charging, port: port-b, route: [over, fender] }`), or a wait (`run-on: 1 min`, with
 * `times`). What the words mean is read by the session; here is only the form.
 */
import { z } from 'zod';

export const WAITS = ['10 s', '1 min', '5 min', 'until something happens'] as const;
export type Wait = (typeof WAITS)[number];

const argument = z.union([z.string().max(200), z.number(), z.array(z.string().max(60)).max(20)]);
const namedCommand = z
  .record(z.string().min(1).max(40), z.record(z.string().min(1).max(40), argument))
  .refine((line) => Object.keys(line).length === 1, { message: 'a line holds one command' });
const wait = z.strictObject({ 'run-on': z.enum(WAITS), times: z.int().min(1).max(200).optional() });

export type PlanLine =
  | string
  | { readonly 'run-on': Wait; readonly times?: number | undefined }
  | Readonly<Record<string, Readonly<Record<string, string | number | readonly string[]>>>>;

const isWait = (line: unknown): boolean => typeof line === 'object' && line !== null && 'run-on' in line;

const line = z.unknown().superRefine((given, context) => {
  const shape = typeof given === 'string' ? z.string().min(1).max(200) : isWait(given) ? wait : namedCommand;
  const result = shape.safeParse(given);
  for (const issue of result.error?.issues ?? []) context.addIssue({ ...issue, input: given } as never);
}) as unknown as z.ZodType<PlanLine>;

export const planLinesSchema = z.array(line).max(400);
export const planFileSchema = z.strictObject({ schema: z.literal(1), lines: planLinesSchema });
