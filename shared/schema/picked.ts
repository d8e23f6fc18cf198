/**
 * A schema that is chosen by looking at what stands there. Unlike a plain union, a mistake inside is reported where it
 * stands and not as "none of these fits", and an unknown key with the keys that are known there (`known`).
 */
import { z } from 'zod';
import { keysAt } from './keysAt.ts';

export interface WithKnownKeys {
  readonly known?: readonly string[];
}

/** `pick` gives the schema for what stands there, or what to say where none fits. */
export function picked<Out>(pick: (given: unknown) => z.ZodType | string): z.ZodType<Out> {
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
  return checked as unknown as z.ZodType<Out>;
}

/** One of several strict shapes, told apart by a key that only it has. */
export function byKey<Out>(shapes: Readonly<Record<string, z.ZodType>>): z.ZodType<Out> {
  const keys = Object.keys(shapes);
  return picked<Out>((given) => {
    const isObject = typeof given === 'object' && given !== null && !Array.isArray(given);
    const key = isObject ? keys.find((candidate) => Object.hasOwn(given, candidate)) : undefined;
    return key === undefined ? `expected one of the keys ${keys.join(', ')}` : shapes[key];
  });
}
