/**
 * The run-time tables against every reference row inside their range (20 Pa to 0.96 of critical pressure, single-phase
 * states from 200 K to the equation's highest temperature): T within 0.02 %, density within 0.05 %, h(p, T) within
 * 20 J/kg in one phase, no phase mistaken. Rows: CoolProp 8.0.1dev, see README.md here.
 */
import { describe, expect, it } from 'vitest';
import { REFRIGERANT_IDS, refrigerant } from '../../src/refrigerant/fluids';
import { createTableStates } from '../../src/refrigerant/tableStates';
import { readCsv, worst } from './readCsv';

const TEMPERATURE = 2e-4;
const DENSITY = 5e-4;
const ENTHALPY_J_PER_KG = 20;

describe.each(REFRIGERANT_IDS)('tables of %s', (id) => {
  const fluid = refrigerant(id);
  const file = id.replace('-', '');
  const find = createTableStates(fluid);
  const inRange = (row: Readonly<Record<string, string>>): boolean =>
    Number(row.p) <= fluid.range.maxPressurePa;

  it.each(['superheat', 'subcooled', 'twophase'])('answer the %s rows by p and h', (kind) => {
    const rows = readCsv(`${kind}-${file}.csv`).filter(inRange);
    expect(rows.length).toBeGreaterThan(180);
    const states = new Map(rows.map((row) => [row, find('p,h', Number(row.p), Number(row.h))]));
    const phase = { superheat: 'vapour', subcooled: 'liquid', twophase: 'twoPhase' }[kind];
    expect(rows.filter((row) => states.get(row)?.phase !== phase)).toEqual([]);
    const temperature = worst(
      rows,
      (row) => (states.get(row)?.temperatureK ?? Number.NaN) / Number(row.T) - 1,
    );
    const density = worst(
      rows,
      (row) => (states.get(row)?.densityKgPerM3 ?? Number.NaN) / Number(row.rho) - 1,
    );
    expect(temperature.error, JSON.stringify(temperature.row)).toBeLessThan(TEMPERATURE);
    expect(density.error, JSON.stringify(density.row)).toBeLessThan(DENSITY);
  });

  it.each(['superheat', 'subcooled'])('answer the %s rows by p and T', (kind) => {
    const rows = readCsv(`${kind}-${file}.csv`).filter(inRange);
    const found = worst(
      rows,
      (row) => find('p,T', Number(row.p), Number(row.T)).enthalpyJPerKg - Number(row.h),
    );
    expect(found.error, JSON.stringify(found.row)).toBeLessThan(ENTHALPY_J_PER_KG);
  });

  it('answer the saturation rows by T and by p', () => {
    const rows = readCsv(`saturation-${file}.csv`).filter(inRange);
    const pressure = worst(rows, (row) => fluid.saturationPressurePa(Number(row.T)) / Number(row.p) - 1);
    const temperature = worst(rows, (row) => fluid.saturationTemperatureK(Number(row.p)) / Number(row.T) - 1);
    const vapour = worst(rows, (row) => find('T,q', Number(row.T), 1).enthalpyJPerKg - Number(row.h_v));
    const liquid = worst(rows, (row) => find('p,q', Number(row.p), 0).densityKgPerM3 / Number(row.rho_l) - 1);
    expect(pressure.error).toBeLessThan(DENSITY);
    expect(temperature.error).toBeLessThan(TEMPERATURE);
    expect(vapour.error).toBeLessThan(ENTHALPY_J_PER_KG);
    expect(liquid.error).toBeLessThan(DENSITY);
  });

  it('answer the rho, u rows of the dome and the vapour', () => {
    const rows = readCsv(`invert-${file}.csv`).filter(
      (row) => inRange(row) && (row.region === 'two-phase' || row.region === 'vapour'),
    );
    expect(rows.length).toBeGreaterThan(300);
    const { maxTemperatureK } = fluid.range;
    const inside = rows.filter((row) => Number(row.T) < maxTemperatureK);
    const found = worst(
      inside,
      (row) => find('rho,u', Number(row.rho), Number(row.u)).temperatureK / Number(row.T) - 1,
    );
    expect(found.error, JSON.stringify(found.row)).toBeLessThan(TEMPERATURE);
  });
});
