/** The committed tables are what the builder makes from the committed coefficients, byte for byte, and small. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildTables } from '../../src/refrigerant/buildTables';

const ROOT = new URL('../../', import.meta.url);
const LARGEST_BYTES = 40_000;

describe('building the tables', () => {
  const built = buildTables();

  it('makes one file a fluid', () => {
    expect(built.map((file) => file.path)).toEqual([
      'src/refrigerant/tables/r134a.ts',
      'src/refrigerant/tables/r12.ts',
      'src/refrigerant/tables/r1234yf.ts',
    ]);
  });

  it.each(built.map((file) => [file.path, file.text] as const))(
    'gives the committed bytes of %s',
    (path, text) => {
      const committed = readFileSync(new URL(path, ROOT), 'utf8');
      expect(committed === text).toBe(true);
      expect(Buffer.byteLength(text)).toBeLessThanOrEqual(LARGEST_BYTES);
    },
  );
});
