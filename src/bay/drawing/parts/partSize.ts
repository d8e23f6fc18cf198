/** What a drawing needs to know about its part: a number of the layout, its fallback where the layout says nothing. */
import type { Part } from '../../../layout/layout';

export function sizeOf(part: Part, key: string, fallback?: number): number {
  const value = part.size?.[key] ?? fallback;
  if (value === undefined) throw new RangeError(`part "${part.id}" (${part.kind}) needs size.${key}`);
  return value;
}
