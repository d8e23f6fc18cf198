/** Keys a schema allows at a path, for "did you mean": of every shape that may stand there. */
import type { z } from 'zod';
import { shapesOf } from './picked.ts';
import type { YamlPath } from './readYaml.ts';

interface Shaped {
  readonly shape?: Readonly<Record<string, Shaped>>;
  readonly element?: Shaped;
  readonly options?: readonly unknown[];
  readonly unwrap?: () => Shaped;
}

/** Empty where the schema does not say. */
export function keysAt(schema: z.ZodType, path: YamlPath): string[] {
  let here = shapesIn(schema as unknown as Shaped);
  for (const part of path)
    here = here.flatMap((one) => {
      const inner = typeof part === 'number' ? one.element : one.shape?.[part];
      return inner === undefined ? [] : shapesIn(inner);
    });
  return [...new Set(here.flatMap(({ shape }) => Object.keys(shape ?? {})))];
}

/** What may stand there, out of what is optional, chosen by looking, or one of several. */
function shapesIn(schema: Shaped): Shaped[] {
  if (schema.shape || schema.element) return [schema];
  const picked = shapesOf(schema as unknown as z.ZodType) as readonly unknown[] as
    | readonly Shaped[]
    | undefined;
  if (picked) return picked.flatMap(shapesIn);
  const among = schema.options?.filter((one): one is Shaped => typeof one === 'object' && one !== null) ?? [];
  if (among.length > 0) return among.flatMap(shapesIn);
  return schema.unwrap ? shapesIn(schema.unwrap()) : [];
}
