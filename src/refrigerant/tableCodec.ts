/**
 * Tables as text and back: the arrays one after another, little-endian (64-bit floats for the saturation line, 32-bit
 * for the patches), as base64.
 */
import type { PatchData, SaturationData, TableData } from './tableData';
import { COLUMN_NODES, ROW_NODES, SATURATION_NODES } from './tableGrid';

/** What a committed table module exports. */
export interface StoredTable {
  readonly fluid: string;
  readonly molarMassKgPerMol: number;
  readonly gasConstantJPerKgK: number;
  readonly criticalPressurePa: number;
  readonly criticalTemperatureK: number;
  /** Lowest and highest temperature for which the equation of state was published. */
  readonly minTemperatureK: number;
  readonly maxTemperatureK: number;
  readonly topPressurePa: number;
  readonly base64: string;
}

const SATURATION_VALUES = SATURATION_NODES.length;
const PATCH_VALUES = ROW_NODES.length * COLUMN_NODES.length;
const SATURATION_KEYS = [
  'temperatureK',
  'liquidEnthalpy',
  'vapourEnthalpy',
  'liquidVolume',
  'vapourProduct',
  'liquidEntropy',
] as const;
const PATCH_KEYS = ['temperature', 'volume', 'entropy'] as const;
const BYTES = SATURATION_KEYS.length * SATURATION_VALUES * 8 + 2 * PATCH_KEYS.length * PATCH_VALUES * 4;

export function encodeTable(data: TableData): string {
  const bytes = new Uint8Array(BYTES);
  let at = 0;
  const put = (values: Float64Array | Float32Array): void => {
    bytes.set(new Uint8Array(values.buffer, values.byteOffset, values.byteLength), at);
    at += values.byteLength;
  };
  for (const key of SATURATION_KEYS) put(data.saturation[key]);
  for (const side of [data.liquid, data.vapour]) for (const key of PATCH_KEYS) put(side[key]);
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}

/** Throws a plain Error when the text is not of this layout: then the tables want building anew. */
export function decodeTable(stored: StoredTable): TableData {
  const binary = atob(stored.base64);
  if (binary.length !== BYTES)
    throw new Error(`${stored.fluid}: stored table has ${binary.length} bytes, this layout has ${BYTES}`);
  const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
  let at = 0;
  const take = (size: number): ArrayBuffer => {
    at += size;
    return bytes.slice(at - size, at).buffer;
  };
  const saturationColumn = (): Float64Array => new Float64Array(take(8 * SATURATION_VALUES));
  const patchField = (): Float32Array => new Float32Array(take(4 * PATCH_VALUES));
  const saturation: SaturationData = {
    temperatureK: saturationColumn(),
    liquidEnthalpy: saturationColumn(),
    vapourEnthalpy: saturationColumn(),
    liquidVolume: saturationColumn(),
    vapourProduct: saturationColumn(),
    liquidEntropy: saturationColumn(),
  };
  const patch = (): PatchData => ({ temperature: patchField(), volume: patchField(), entropy: patchField() });
  return { topPressurePa: stored.topPressurePa, saturation, liquid: patch(), vapour: patch() };
}
