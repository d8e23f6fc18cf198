/** The five input pairs agree with each other and with both sources, and say no outside the range. */
import { describe, expect, it } from 'vitest';
import { exp } from '../../src/numerics/exp';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { ln } from '../../src/numerics/ln';
import { PROPERTY_PAIRS, type PropertyPair } from '../../src/refrigerant/fluidState';
import { REFRIGERANT_IDS } from '../../src/refrigerant/fluids';
import { OutOfRangeError } from '../../src/refrigerant/outOfRangeError';
import {
  INPUT_COLUMNS,
  type PropertyRow,
  propertyRows,
  stateFinder,
} from '../../src/refrigerant/propertyRows';

const STATES: readonly (readonly [number, number])[] = [
  [120e3, 420e3],
  [300e3, 250e3],
  [1200e3, 240e3],
  [1500e3, 450e3],
  [2500e3, 300e3],
];

function inputOf(pair: PropertyPair, row: PropertyRow): readonly [number, number] {
  const [first, second] = INPUT_COLUMNS[pair];
  const value = (name: string): number =>
    Object.entries(row).find(([key]) => key === name)?.[1] ?? Number.NaN;
  return [value(first), value(second)];
}

describe.each(REFRIGERANT_IDS)('property rows of %s', (id) => {
  const sources = ['table', 'eos'] as const;

  it.each(sources)('come back the same by every pair that fits the state (%s)', (source) => {
    for (const row of propertyRows(id, 'p,h', STATES, source)) {
      for (const pair of PROPERTY_PAIRS) {
        if (row.q === null ? pair.endsWith('q') : pair === 'p,T') continue;
        const [again] = propertyRows(id, pair, [inputOf(pair, row)], source);
        expect(again.phase).toBe(row.phase);
        expect(again.T_K / row.T_K).toBeCloseTo(1, 7);
        expect(again.rho_kg_per_m3 / row.rho_kg_per_m3).toBeCloseTo(1, 6);
        expect(again.h_J_per_kg / row.h_J_per_kg).toBeCloseTo(1, 6);
        expect(again.s_J_per_kgK / row.s_J_per_kgK).toBeCloseTo(1, 6);
      }
    }
  });

  it('agree between tables and equation', () => {
    const [table, eos] = sources.map((source) => propertyRows(id, 'p,h', STATES, source));
    table.forEach((row, i) => {
      expect(Math.abs(row.T_K / eos[i].T_K - 1)).toBeLessThan(2e-4);
      expect(Math.abs(row.rho_kg_per_m3 / eos[i].rho_kg_per_m3 - 1)).toBeLessThan(5e-4);
      expect(row.phase).toBe(eos[i].phase);
      expect(row.u_J_per_kg).toBeCloseTo(row.h_J_per_kg - row.p_Pa / row.rho_kg_per_m3, 6);
    });
  });

  it.each(sources)('refuse what is out of range, with the range in the error (%s)', (source) => {
    const ask = (pair: PropertyPair, first: number, second: number) => () =>
      propertyRows(id, pair, [[first, second]], source);
    expect(ask('p,h', 0, 300e3)).toThrow(OutOfRangeError);
    expect(ask('p,T', 300e3, 700)).toThrow(OutOfRangeError);
    expect(ask('p,T', 300e3, 50)).toThrow(OutOfRangeError);
    expect(ask('p,h', 300e3, 900e3)).toThrow(OutOfRangeError);
    expect(ask('T,q', 300, 1.1)).toThrow(/quality 1.1/);
    expect(ask('T,q', 500, 0.5)).toThrow(OutOfRangeError);
    expect(ask('p,q', 1e9, 0.5)).toThrow(OutOfRangeError);
    expect(ask('rho,u', 1300, 900e3)).toThrow(OutOfRangeError);
    expect(ask('p,T', Number.NaN, 300)).toThrow(OutOfRangeError);
  });

  it.each(sources)('answer any pair of numbers with a state or with the range (%s)', (source) => {
    const find = stateFinder(id, source);
    const between = (low: number, high: number, name: string, i: number): number =>
      low + (high - low) * keyedUniform(5, name, id, i);
    let answered = 0;
    const ask = (pair: PropertyPair, first: number, second: number): void => {
      try {
        const state = find(pair, first, second);
        expect(Number.isFinite(state.densityKgPerM3 + state.entropyJPerKgK + state.temperatureK)).toBe(true);
        answered++;
      } catch (error) {
        if (!(error instanceof OutOfRangeError)) throw error;
      }
    };
    for (let i = 0; i < 300; i++) {
      const pressurePa = exp(between(0, ln(60e6), 'pressure', i));
      ask('p,T', pressurePa, between(120, 500, 'temperature', i));
      ask('p,h', pressurePa, between(20e3, 600e3, 'enthalpy', i));
      ask('p,h', between(3e6, 4.5e6, 'near critical', i), between(300e3, 450e3, 'enthalpy', i));
      ask('T,q', between(110, 400, 'temperature', i), between(0, 1, 'quality', i));
      ask('p,q', pressurePa, between(0, 1, 'quality', i));
      ask('rho,u', exp(between(-1, 6.5, 'density', i)), between(50e3, 550e3, 'energy', i));
    }
    expect(answered).toBeGreaterThan(600);
  });
});
