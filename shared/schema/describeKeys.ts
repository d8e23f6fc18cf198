/** Every key a schema knows, as an author writes it: `weather.sun`, `faults[].fault`, with what may stand there. */
import type { z } from 'zod';
import { isBound, isOptional, type SchemaPart } from './schemaPart.ts';

export interface KeyDescription {
  readonly id: string;
  readonly required: boolean;
  /** `text`, `number`, `yes-no`, `list`, `group`, `quantity`, `choice`, or the name of a schema told elsewhere. */
  readonly is: string;
  readonly of?: readonly unknown[];
  readonly least?: number;
  readonly most?: number;
}

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'number',
  boolean: 'yes-no',
  enum: 'choice',
  literal: 'choice',
  object: 'group',
  array: 'list',
  record: 'group',
  union: 'group',
};

/** `elsewhere`: schemas that are named and not gone into, such as a condition. */
export function describeKeys(schema: z.ZodType, elsewhere: ReadonlyMap<z.ZodType, string>): KeyDescription[] {
  const found = new Map<string, KeyDescription>();
  const walk = (id: string, given: SchemaPart, asked: boolean): void => {
    const optional = isOptional(given);
    const part = optional && given.unwrap ? given.unwrap() : given;
    const required = asked && !optional;
    const named = elsewhere.get(part as unknown as z.ZodType);
    if (id !== '') put(found, { id, required, is: named ?? kindOf(part), ...boundsOf(part) });
    if (named !== undefined) return;
    for (const [key, inner] of Object.entries(part.shape ?? {}))
      walk(id === '' ? key : `${id}.${key}`, inner, true);
    if (part.element) walk(`${id}[]`, part.element, true);
    for (const key of part.def.keyType?.options ?? [])
      walk(`${id}.${String(key)}`, part.def.valueType as SchemaPart, false);
    if (part.def.type === 'union')
      for (const one of part.options as readonly SchemaPart[]) {
        for (const [key, inner] of Object.entries(one.shape ?? {})) walk(`${id}.${key}`, inner, true);
      }
  };
  walk('', schema as unknown as SchemaPart, true);
  return [...found.values()];
}

function kindOf(part: SchemaPart): string {
  if (part.meta?.()?.quantity !== undefined) return 'quantity';
  return KINDS[part.def.type] ?? part.def.type;
}

function boundsOf(part: SchemaPart): Partial<Pick<KeyDescription, 'of' | 'least' | 'most'>> {
  const { quantity, min, max } = part.meta?.() ?? {};
  if (quantity !== undefined) return { of: [quantity], least: Number(min), most: Number(max) };
  const { type, values } = part.def;
  if (type === 'enum') return { of: part.options ?? [] };
  if (type === 'literal') return { of: values ?? [] };
  if (type === 'number') return bounds(part.minValue, part.maxValue);
  return type === 'string' ? bounds(undefined, part.maxLength) : {};
}

const bounds = (least?: number | null, most?: number | null): { least?: number; most?: number } => ({
  ...(isBound(least) ? { least } : {}),
  ...(isBound(most) ? { most } : {}),
});

/** A key of two shapes of one list may be either's. */
function put(found: Map<string, KeyDescription>, key: KeyDescription): void {
  const known = found.get(key.id);
  const of = [...new Set([...(known?.of ?? []), ...(key.of ?? [])])];
  found.set(key.id, { ...key, ...(of.length > 0 ? { of } : {}) });
}
