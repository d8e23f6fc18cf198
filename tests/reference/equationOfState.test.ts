/**
 * The equations of state against every row of the reference tables (CoolProp 8.0.1dev, see README.md here; equations:
 * Tillner-Roth & Baehr 1994, Marx, Pruss & Wagner 1992, Lemmon & Akasaka 2022), to 1e-6 relative.
 */
import { describe, expect, it } from 'vitest';
import { createEosStates } from '../../src/refrigerant/eos/eosStates';
import { FLUID_DATA } from '../../src/refrigerant/eos/fluidData';
import { createHelmholtz } from '../../src/refrigerant/eos/helmholtz';
import { createSaturationLine } from '../../src/refrigerant/eos/saturationLine';
import { REFRIGERANT_IDS } from '../../src/refrigerant/fluids';
import { type CsvRow, readCsv, worst } from './readCsv';

const TOLERANCE = 1e-6;

describe.each(REFRIGERANT_IDS)('equation of state of %s', (id) => {
  const data = FLUID_DATA[id];
  const file = id.replace('-', '');
  const find = createEosStates(data);

  function expectRelative(rows: readonly CsvRow[], column: string, value: (row: CsvRow) => number): void {
    const found = worst(rows, (row) => value(row) / Number(row[column]) - 1);
    expect(found.error, `${column} at ${JSON.stringify(found.row)}`).toBeLessThan(TOLERANCE);
  }

  it('gives the saturation line', () => {
    const rows = readCsv(`saturation-${file}.csv`);
    expect(rows.length).toBeGreaterThan(140);
    const line = createSaturationLine(data);
    const at = (row: CsvRow): ReturnType<typeof line.solveTemperature> =>
      line.solveTemperature(Number(row.T));
    expectRelative(rows, 'p', (row) => at(row).pressurePa);
    expectRelative(rows, 'rho_l', (row) => at(row).liquid.densityKgPerM3);
    expectRelative(rows, 'rho_v', (row) => at(row).vapour.densityKgPerM3);
    expectRelative(rows, 'h_l', (row) => at(row).liquid.enthalpyJPerKg);
    expectRelative(rows, 'h_v', (row) => at(row).vapour.enthalpyJPerKg);
    expectRelative(rows, 's_l', (row) => at(row).liquid.entropyJPerKgK);
    expectRelative(rows, 's_v', (row) => at(row).vapour.entropyJPerKgK);
    expectRelative(rows, 'cp_l', (row) => at(row).liquid.heatCapacityPressureJPerKgK());
    expectRelative(rows, 'cp_v', (row) => at(row).vapour.heatCapacityPressureJPerKgK());
    expectRelative(rows, 'w_l', (row) => at(row).liquid.soundSpeedMPerS());
    expectRelative(rows, 'w_v', (row) => at(row).vapour.soundSpeedMPerS());
  });

  it('finds the saturation temperature of a pressure', () => {
    const line = createSaturationLine(data);
    expectRelative(
      readCsv(`saturation-${file}.csv`),
      'T',
      (row) => line.solvePressure(Number(row.p)).temperatureK,
    );
  });

  it.each(['superheat', 'subcooled'])('gives %s states from p, T and from p, h', (kind) => {
    const rows = readCsv(`${kind}-${file}.csv`);
    expect(rows.length).toBeGreaterThanOrEqual(200);
    const state = createHelmholtz(data);
    const byT = new Map(rows.map((row) => [row, find('p,T', Number(row.p), Number(row.T))]));
    const byH = new Map(rows.map((row) => [row, find('p,h', Number(row.p), Number(row.h))]));
    expectRelative(rows, 'rho', (row) => byT.get(row)?.densityKgPerM3 ?? Number.NaN);
    expectRelative(rows, 'h', (row) => byT.get(row)?.enthalpyJPerKg ?? Number.NaN);
    expectRelative(rows, 's', (row) => byT.get(row)?.entropyJPerKgK ?? Number.NaN);
    expectRelative(rows, 'u', (row) => byT.get(row)?.internalEnergyJPerKg ?? Number.NaN);
    expectRelative(rows, 'T', (row) => byH.get(row)?.temperatureK ?? Number.NaN);
    expectRelative(rows, 'rho', (row) => byH.get(row)?.densityKgPerM3 ?? Number.NaN);
    expectRelative(rows, 'cp', (row) => at(row).heatCapacityPressureJPerKgK());
    expectRelative(rows, 'w', (row) => at(row).soundSpeedMPerS());

    function at(row: CsvRow): typeof state {
      state.setTemperatureK(Number(row.T));
      state.setDensityKgPerM3(byT.get(row)?.densityKgPerM3 ?? Number.NaN);
      return state;
    }
  });

  it('gives two-phase states from p, q and from p, h', () => {
    const rows = readCsv(`twophase-${file}.csv`);
    expect(rows.length).toBe(300);
    const byQ = new Map(rows.map((row) => [row, find('p,q', Number(row.p), Number(row.quality))]));
    expectRelative(rows, 'T', (row) => byQ.get(row)?.temperatureK ?? Number.NaN);
    expectRelative(rows, 'rho', (row) => byQ.get(row)?.densityKgPerM3 ?? Number.NaN);
    expectRelative(rows, 'h', (row) => byQ.get(row)?.enthalpyJPerKg ?? Number.NaN);
    expectRelative(rows, 's', (row) => byQ.get(row)?.entropyJPerKgK ?? Number.NaN);
    expectRelative(rows, 'u', (row) => byQ.get(row)?.internalEnergyJPerKg ?? Number.NaN);
    expectRelative(rows, 'quality', (row) => find('p,h', Number(row.p), Number(row.h)).quality ?? Number.NaN);
  });

  it('finds p, T, h and quality from rho and u, supercritical states too', () => {
    const rows = readCsv(`invert-${file}.csv`);
    expect(rows.length).toBe(500);
    const found = new Map(rows.map((row) => [row, find('rho,u', Number(row.rho), Number(row.u))]));
    expectRelative(rows, 'p', (row) => found.get(row)?.pressurePa ?? Number.NaN);
    expectRelative(rows, 'T', (row) => found.get(row)?.temperatureK ?? Number.NaN);
    expectRelative(rows, 'h', (row) => found.get(row)?.enthalpyJPerKg ?? Number.NaN);
    const dome = rows.filter((row) => row.region === 'two-phase');
    expectRelative(dome, 'quality', (row) => found.get(row)?.quality ?? Number.NaN);
    const phases = {
      'two-phase': 'twoPhase',
      liquid: 'liquid',
      vapour: 'vapour',
      supercritical: 'supercritical',
    };
    for (const row of rows) {
      const expected = Object.entries(phases).find(([name]) => row.region.startsWith(name))?.[1];
      const state = found.get(row);
      // Liquid over the critical pressure is still liquid here; so is cool dense fluid in the supercritical list.
      if (expected !== 'supercritical') expect(state?.phase, JSON.stringify(row)).toBe(expected);
    }
  });

  it('gives the reference cycles', () => {
    const rows = readCsv('cycle.csv').filter((row) => row.fluid === file);
    expect(rows.length).toBe(40);
    const line = createSaturationLine(data);
    const values = new Map(rows.map((row) => [row, cycleOf(row)]));
    expectRelative(rows, 'h1', (row) => values.get(row)?.h1 ?? Number.NaN);
    expectRelative(rows, 'h2s', (row) => values.get(row)?.h2s ?? Number.NaN);
    expectRelative(rows, 'h3', (row) => values.get(row)?.h3 ?? Number.NaN);
    expectRelative(rows, 'COP', (row) => values.get(row)?.cop ?? Number.NaN);

    function cycleOf(row: CsvRow): { h1: number; h2s: number; h3: number; cop: number } {
      const evaporating = Number(row.T_evap);
      const condensing = Number(row.T_cond);
      const superheat = Number(row.superheat);
      const subcooling = Number(row.subcooling);
      const low = line.solveTemperature(evaporating).pressurePa;
      const high = line.solveTemperature(condensing).pressurePa;
      const inlet = superheat > 0 ? find('p,T', low, evaporating + superheat) : find('T,q', evaporating, 1);
      const outlet = subcooling > 0 ? find('p,T', high, condensing - subcooling) : find('T,q', condensing, 0);
      const h2s = enthalpyAtEntropy(high, inlet.entropyJPerKgK);
      const work = (h2s - inlet.enthalpyJPerKg) / Number(row.eta_is);
      const cop = (inlet.enthalpyJPerKg - outlet.enthalpyJPerKg) / work;
      return { h1: inlet.enthalpyJPerKg, h2s, h3: outlet.enthalpyJPerKg, cop };
    }

    function enthalpyAtEntropy(pressurePa: number, entropy: number): number {
      let h = line.solvePressure(pressurePa).vapour.enthalpyJPerKg;
      for (let round = 0; round < 50; round++) {
        const state = find('p,h', pressurePa, h);
        h += (entropy - state.entropyJPerKgK) * state.temperatureK;
      }
      return h;
    }
  });
});
