/**
 * One of several strict shapes, told apart by a key that only it has. Unlike a plain union, a mistake inside is reported
 * where it stands and not as "none of these fits".
 */
import { z } from 'zod';

export function byKey<Out>(shapes: Readonly<Record<string, z.ZodType>>): z.ZodType<Out> {
  const keys = Object.keys(shapes);
  const checked = z.unknown().superRefine((data, context) => {
    const isObject = typeof data === 'object' && data !== null && !Array.isArray(data);
    const key = isObject ? keys.find((candidate) => Object.hasOwn(data, candidate)) : undefined;
    if (key === undefined) {
      context.addIssue({ code: 'custom', message: `expected one of the keys ${keys.join(', ')}` });
      return;
    }
    const result = shapes[key].safeParse(data);
    for (const issue of result.error?.issues ?? []) context.addIssue({ ...issue, input: data } as never);
  });
  return checked as unknown as z.ZodType<Out>;
}
