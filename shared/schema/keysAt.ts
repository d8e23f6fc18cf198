/** Keys a schema allows at a path, for "did you mean". */
import type { z } from 'zod';
import type { YamlPath } from './readYaml.ts';

interface Shaped {
  readonly shape?: Readonly<Record<string, Shaped>>;
  readonly element?: Shaped;
  readonly unwrap?: () => Shaped;
}

/** Empty where the schema does not say. */
export function keysAt(schema: z.ZodType, path: YamlPath): string[] {
  let here: Shaped | undefined = schema as unknown as Shaped;
  for (const part of path) {
    here = unwrapped(here);
    here = typeof part === 'number' ? here?.element : here?.shape?.[part];
  }
  return Object.keys(unwrapped(here)?.shape ?? {});
}

function unwrapped(schema: Shaped | undefined): Shaped | undefined {
  let here = schema;
  while (here && !here.shape && !here.element && here.unwrap) here = here.unwrap();
  return here;
}
