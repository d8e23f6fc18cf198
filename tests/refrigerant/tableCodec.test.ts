/** A table is kept to the last bit, whatever its numbers are, and needs no more room than said. */
import { describe, expect, it } from 'vitest';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { riceReader, riceWriter } from '../../src/numerics/riceCode';
import { refrigerant } from '../../src/refrigerant/fluids';
import { doubleBits, singleBits } from '../../src/refrigerant/orderedBits';
import { decodeTable, encodeTable } from '../../src/refrigerant/tableCodec';
import type { TableData } from '../../src/refrigerant/tableData';
import { table } from '../../src/refrigerant/tables/r134a';

const bytesOf = ({ saturation, liquid, vapour }: TableData): Buffer =>
  Buffer.concat(
    [saturation, liquid, vapour].flatMap((part) =>
      Object.values(part).map((field: Float64Array | Float32Array) => Buffer.from(field.buffer)),
    ),
  );

describe('the table codec', () => {
  it('gives back every bit of a table with steps, noughts, minus noughts and changes of sign', () => {
    const data = decodeTable(table);
    const odd = [0, -0, 1e-30, -1e30, 1, -1];
    [data.saturation.liquidEnthalpy, data.liquid.volume, data.vapour.entropy].forEach((field, part) => {
      for (let n = 0; n < 40; n++) {
        const at = Math.floor(keyedUniform(7, 'codec', `${part}`, n) * field.length);
        field[at] = odd[n % odd.length];
      }
    });
    const again = decodeTable({ ...table, base64: encodeTable(data) });
    expect(bytesOf(again).equals(bytesOf(data))).toBe(true);
  });

  it('writes the committed table as it is committed', () => {
    expect(encodeTable(decodeTable(table)) === table.base64).toBe(true);
    expect(refrigerant('R-134a').criticalPressurePa).toBe(table.criticalPressurePa);
  });

  it('takes a fluid in 26 kB', () => {
    expect(atob(table.base64).length).toBeLessThan(26_000);
  });
});

describe('numbers in order of their bits', () => {
  it.each([
    ['double', doubleBits, [-1, -(2 ** -1074), -0, 0, 2 ** -1074, 1, 1 + 2 ** -52]],
    ['single', singleBits, [-1, -(2 ** -149), -0, 0, 2 ** -149, 1, 1 + 2 ** -23]],
  ] as const)('lie apart by how many are between: %s', (_, bits, values) => {
    expect(bits.apart(1, values[6])).toBe(1);
    expect(values.slice(1).every((value, i) => bits.apart(values[i], value) > 0)).toBe(true);
    expect(bits.apart(values[1], values[4])).toBe(3);
    for (const [from, to] of [
      [values[1], values[4]],
      [values[4], values[1]],
      [0, -0],
      [1, values[6]],
    ])
      expect(Object.is(bits.further(from, bits.apart(from, to)), to)).toBe(true);
  });
});

describe('the code of whole numbers', () => {
  it('reads what it wrote, and where a number was left out the word that stands there', () => {
    const writer = riceWriter();
    const values = Array.from({ length: 500 }, (_, n) =>
      n % 97 === 0 ? 1e12 + n : Math.floor(2000 * keyedUniform(3, 'rice', 'test', n)),
    );
    for (const value of values) if (!writer.put(value)) writer.word(value % 1e6);
    const reader = riceReader(writer.bytes());
    for (const value of values)
      expect(reader.take() ?? `word ${reader.word()}`).toBe(value < 1e12 ? value : `word ${value % 1e6}`);
  });
});
