/**
 * Tables as text and back, to the last bit. Of each node only how far its number (64 bits on the saturation line, 32 in
 * the patches) lies from the forecast of the nodes before it is kept, as a Rice code, and all of it as base64. Forecasts
 * are reckoned with what gives the same bits in every engine, so every engine finds the same table.
 */
import { type RiceReader, type RiceWriter, riceReader, riceWriter } from '../numerics/riceCode';
import { forecastNodes, type NodeGrid } from './forecastNodes';
import { doubleBits, type OrderedBits, singleBits } from './orderedBits';
import type { PatchData, SaturationData, TableData } from './tableData';
import { COLUMN_NODES, ROW_NODES, SATURATION_NODES, TOP_ROW } from './tableGrid';

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

const SATURATION_KEYS = [
  'temperatureK',
  'liquidEnthalpy',
  'vapourEnthalpy',
  'liquidVolume',
  'vapourProduct',
  'liquidEntropy',
] as const;
const PATCH_KEYS = ['temperature', 'volume', 'entropy'] as const;
/** Looking as far back as keeps least: farther, and the rounding of the nodes counts for more than what is gained. */
const LINE: NodeGrid = {
  rows: SATURATION_NODES,
  columns: Float64Array.of(1),
  rowsBack: 8,
  columnsBack: 0,
};
const PATCH: NodeGrid = {
  rows: ROW_NODES,
  columns: COLUMN_NODES,
  freshRow: TOP_ROW + 1,
  rowsBack: 4,
  columnsBack: 3,
};
/** Distances up to here are exact with their sign folded in. */
const FARTHEST = 2251799813685248;

type Field = Float64Array | Float32Array;

const bitsOf = (field: Field): OrderedBits => (field instanceof Float64Array ? doubleBits : singleBits);

export function encodeTable(data: TableData): string {
  const writer = riceWriter();
  for (const key of SATURATION_KEYS) write(writer, data.saturation[key], LINE);
  for (const side of [data.liquid, data.vapour])
    for (const key of PATCH_KEYS) write(writer, side[key], PATCH);
  let binary = '';
  for (const byte of writer.bytes()) binary += String.fromCharCode(byte);
  return btoa(binary);
}

export function decodeTable(stored: StoredTable): TableData {
  const reader = riceReader(Uint8Array.from(atob(stored.base64), (character) => character.charCodeAt(0)));
  const line = (): Float64Array => read(reader, new Float64Array(SATURATION_NODES.length), LINE);
  const patchField = (): Float32Array =>
    read(reader, new Float32Array(ROW_NODES.length * COLUMN_NODES.length), PATCH);
  const saturation: SaturationData = {
    temperatureK: line(),
    liquidEnthalpy: line(),
    vapourEnthalpy: line(),
    liquidVolume: line(),
    vapourProduct: line(),
    liquidEntropy: line(),
  };
  const patch = (): PatchData => ({ temperature: patchField(), volume: patchField(), entropy: patchField() });
  return { topPressurePa: stored.topPressurePa, saturation, liquid: patch(), vapour: patch() };
}

function write(writer: RiceWriter, field: Field, grid: NodeGrid): void {
  const bits = bitsOf(field);
  forecastNodes(field.slice(), grid, (at, forecast) => {
    const apart = bits.apart(forecast, field[at]);
    const isNear = Math.abs(apart) < FARTHEST;
    if (!isNear) writer.leaveOut();
    if (!isNear || !writer.put(apart < 0 ? -2 * apart - 1 : 2 * apart)) {
      for (const word of new Uint32Array(Float64Array.of(field[at]).buffer)) writer.word(word);
    }
    return field[at];
  });
}

function read<Values extends Field>(reader: RiceReader, field: Values, grid: NodeGrid): Values {
  const bits = bitsOf(field);
  forecastNodes(field, grid, (_, forecast) => {
    const kept = reader.take();
    if (kept === null) return new Float64Array(Uint32Array.of(reader.word(), reader.word()).buffer)[0];
    return bits.further(forecast, kept % 2 === 0 ? kept / 2 : -(kept + 1) / 2);
  });
  return field;
}
