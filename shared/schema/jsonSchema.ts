/**
 * The form of a scenario as JSON Schema (2020-12), for editors that complete keys and mark slips while somebody writes. Made
 * from the one definition; ids come from whoever knows them, descriptions from the page for authors. It says a little less
 * than `check`: ids that depend on the car and units out of range are left to that.
 */

import type { z } from 'zod';
import { type QuantityKind, unitsOf } from '../../src/units/unitTable';
import { conditionSchema } from './condition.ts';
import { shapesOf } from './picked.ts';
import { between } from './quantity.ts';
import { ruleSchema } from './rubric.ts';
import { scenarioSchema } from './scenario.ts';
import { isBound, isOptional, type SchemaPart } from './schemaPart.ts';

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
type JsonGroup = { readonly [key: string]: Json };

/** What a key may hold, and what it is for, by its path: `faults[].fault`. */
export interface SchemaNotes {
  readonly ids: Readonly<Record<string, readonly string[]>>;
  readonly says: ReadonlyMap<string, string>;
}

const NAMED = new Map<unknown, string>([
  [conditionSchema, 'condition'],
  [ruleSchema, 'rule'],
]);

export function scenarioJsonSchema(notes: SchemaNotes): JsonGroup {
  const defs = Object.fromEntries(
    [...NAMED].map(([schema, name]) => [
      name,
      { anyOf: shapesIn(schema as z.ZodType).map((shape) => groupOf(shape, '', notes)) },
    ]),
  );
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Scenario',
    ...groupOf(scenarioSchema as unknown as SchemaPart, '', notes),
    $defs: defs,
  };
}

const shapesIn = (schema: z.ZodType): readonly SchemaPart[] =>
  (shapesOf(schema) ?? []) as unknown as readonly SchemaPart[];

function partOf(given: SchemaPart, path: string, notes: SchemaNotes): JsonGroup {
  const part = isWrapped(given) && given.unwrap ? given.unwrap() : given;
  const said = notes.says.get(path);
  const description = said === undefined ? {} : { description: said };
  const name = NAMED.get(part);
  if (name !== undefined) return { $ref: `#/$defs/${name}`, ...description };
  const ids = notes.ids[path];
  if (ids !== undefined) return { enum: ids, ...description };
  const shapes = shapesIn(part as unknown as z.ZodType);
  if (shapes.length > 0) return { anyOf: shapes.map((shape) => partOf(shape, path, notes)), ...description };
  return { ...kindOf(part, path, notes), ...description };
}

const isWrapped = (part: SchemaPart): boolean => isOptional(part) || part.def.type === 'lazy';

function kindOf(part: SchemaPart, path: string, notes: SchemaNotes): JsonGroup {
  const { quantity, min, max } = part.meta?.() ?? {};
  if (quantity !== undefined) return quantityOf(quantity, { min: Number(min), max: Number(max) });
  const bounds = (from: string, to: string, least?: number | null, most?: number | null): JsonGroup => ({
    ...(isBound(least) ? { [from]: least } : {}),
    ...(isBound(most) ? { [to]: most } : {}),
  });
  switch (part.def.type) {
    case 'object':
      return groupOf(part, path, notes);
    case 'array':
      return { type: 'array', items: part.element ? partOf(part.element, `${path}[]`, notes) : true };
    case 'record':
      return recordOf(part, path, notes);
    case 'union':
      return {
        anyOf: ((part.options ?? []) as readonly SchemaPart[]).map((one) => partOf(one, path, notes)),
      };
    case 'enum':
      return { enum: (part.options ?? []) as readonly Json[] };
    case 'literal':
      return { enum: (part.def.values ?? []) as readonly Json[] };
    case 'number':
      return { type: 'number', ...bounds('minimum', 'maximum', part.minValue, part.maxValue) };
    case 'boolean':
      return { type: 'boolean' };
    case 'string':
      return { type: 'string', ...bounds('minLength', 'maxLength', undefined, part.maxLength) };
    default:
      return {};
  }
}

function groupOf(part: SchemaPart, path: string, notes: SchemaNotes): JsonGroup {
  const entries = Object.entries(part.shape ?? {});
  const within = (key: string): string => (path === '' ? key : `${path}.${key}`);
  return {
    type: 'object',
    properties: Object.fromEntries(entries.map(([key, inner]) => [key, partOf(inner, within(key), notes)])),
    required: entries.filter(([, inner]) => !isOptional(inner)).map(([key]) => key),
    additionalProperties: false,
  };
}

function recordOf({ def }: SchemaPart, path: string, notes: SchemaNotes): JsonGroup {
  const value = def.valueType ? partOf(def.valueType, '', notes) : {};
  const keys = (def.keyType?.options ?? []) as readonly string[];
  if (keys.length === 0) return { type: 'object', additionalProperties: value };
  const properties = Object.fromEntries(
    keys.map((key) => [
      key,
      {
        ...value,
        ...(notes.says.has(`${path}.${key}`)
          ? { description: notes.says.get(`${path}.${key}`) as string }
          : {}),
      },
    ]),
  );
  return { type: 'object', properties, additionalProperties: false };
}

/** A number, then one of its units. */
function quantityOf(kind: QuantityKind, range: { readonly min: number; readonly max: number }): JsonGroup {
  const units = Object.keys(unitsOf(kind)).map((name) => name.replace(/[/^$.*+?()[\]{}|]/g, '\\$&'));
  return {
    type: 'string',
    pattern: `^\\s*[+-]?(\\d+\\.?\\d*|\\.\\d+)\\s*(${units.join('|')})\\s*$`,
    $comment: between(kind, range),
  };
}
