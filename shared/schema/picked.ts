/**
 * A schema that is chosen by looking at what stands there. Unlike a plain union, a mistake inside is reported where it
 * stands and not as "none of these fits", and an unknown key with the keys that are known there (`known`).
 */
import { z } from 'zod';
import { nearest } from '../../src/words/nearest';
import { keysAt } from './keysAt.ts';

export interface WithKnownKeys {
  readonly known?: readonly string[];
}

const shapes = new WeakMap<z.ZodType, readonly z.ZodType[]>();

/** What may stand where a schema is chosen by looking; for whoever describes the form. */
export const shapesOf = (schema: z.ZodType): readonly z.ZodType[] | undefined => shapes.get(schema);

/** `pick` gives the schema for what stands there, or what to say where none fits; `all` are those it may give. */
export function picked<Out>(
  pick: (given: unknown) => z.ZodType | string,
  all: readonly z.ZodType[],
): z.ZodType<Out> {
  const checked = z.unknown().superRefine((given, context) => {
    const schema = pick(given);
    if (typeof schema === 'string') {
      context.addIssue({ code: 'custom', message: schema });
      return;
    }
    for (const issue of schema.safeParse(given).error?.issues ?? []) {
      const path = issue.path.map((part) => (typeof part === 'number' ? part : String(part)));
      const own = (issue as WithKnownKeys).known;
      const known = issue.code === 'unrecognized_keys' ? (own ?? keysAt(schema, path)) : undefined;
      context.addIssue({ ...issue, ...(known ? { known } : {}), input: given } as never);
    }
  });
  shapes.set(checked, all);
  return checked as unknown as z.ZodType<Out>;
}

/** One of several strict shapes, told apart by a key that only it has. */
export function byKey<Out>(byName: Readonly<Record<string, z.ZodType>>): z.ZodType<Out> {
  const keys = Object.keys(byName);
  return picked<Out>((given) => {
    const isObject = typeof given === 'object' && given !== null && !Array.isArray(given);
    const key = isObject ? keyOf(Object.keys(given), keys) : undefined;
    return key === undefined ? `expected one of the keys ${keys.join(', ')}` : byName[key];
  }, Object.values(byName));
}

/** The key that tells the shape, or the one that was mistyped for it. */
function keyOf(given: readonly string[], keys: readonly string[]): string | undefined {
  const known = keys.find((candidate) => given.includes(candidate));
  if (known !== undefined) return known;
  for (const one of given) {
    const near = nearest(one, keys);
    if (near !== undefined) return near;
  }
  return undefined;
}
