/** A schema as it tells of itself: what kind it is, what is under it, and its bounds. */
import type { QuantityKind } from '../../src/units/unitTable';

export interface SchemaPart {
  readonly def: {
    readonly type: string;
    readonly values?: readonly unknown[];
    readonly keyType?: SchemaPart;
    readonly valueType?: SchemaPart;
  };
  readonly shape?: Readonly<Record<string, SchemaPart>>;
  readonly element?: SchemaPart;
  /** Values of a choice, or parts of a union. */
  readonly options?: readonly unknown[];
  readonly minValue?: number | null;
  readonly maxValue?: number | null;
  readonly maxLength?: number | null;
  unwrap?(): SchemaPart;
  meta?(): { readonly quantity?: QuantityKind; readonly min?: number; readonly max?: number } | undefined;
}

export const isOptional = ({ def }: SchemaPart): boolean => def.type === 'optional' || def.type === 'default';

/** A bound that says something; a schema without one has none or an infinite one. */
export const isBound = (bound: number | null | undefined): bound is number =>
  typeof bound === 'number' && Number.isFinite(bound);
