import { describe, expect, it } from 'vitest';
import { csvPairs } from '../../src/cli/csvColumns';
import { UsageError } from '../../src/cli/verb';

const NAMES = ['p_Pa', 'h_J_per_kg'] as const;

describe('two columns of a comma-separated file', () => {
  it('are found by name, in any order, with blank lines passed over', () => {
    const { pairs, lines } = csvPairs('s.csv', 'h_J_per_kg,note,p_Pa\n250000,a,3e5\n\n1,b,2\n', NAMES);
    expect(pairs).toEqual([
      [300_000, 250_000],
      [2, 1],
    ]);
    expect(lines).toEqual([2, 4]);
  });

  it('say file, line and column of what is no number', () => {
    expect(() => csvPairs('s.csv', 'p_Pa,h_J_per_kg\n1,2\n300000,2x\n', NAMES)).toThrow(
      's.csv:3:8 "2x" is no number',
    );
    expect(() => csvPairs('s.csv', 'p_Pa,h_J_per_kg\n,2\n', NAMES)).toThrow(UsageError);
  });

  it('say which column is missing and what was found', () => {
    expect(() => csvPairs('s.csv', 'p_bar,h\n1,2\n', NAMES)).toThrow(
      'no column "p_Pa". The header says p_bar,h',
    );
  });
});

describe('numbers in a file', () => {
  it('may have a power of ten, never be hexadecimal', () => {
    expect(csvPairs('f.csv', 'a,b\n1e5,-2.5E-1\n', ['a', 'b']).pairs).toEqual([[100_000, -0.25]]);
    expect(() => csvPairs('f.csv', 'a,b\n1,0x10\n', ['a', 'b'])).toThrow('f.csv:2:3');
  });
});
