/**
 * Vapour-compression cycles with R-134a worked in textbooks, redone with the run-time tables: COP within 0.5 %.
 */
import { describe, expect, it } from 'vitest';
import { refrigerant } from '../../src/refrigerant/fluids';
import { createTableStates } from '../../src/refrigerant/tableStates';
import { kelvinFromCelsius } from '../../src/units/temperature';

const fluid = refrigerant('R-134a');
const find = createTableStates(fluid);
const COP_TOLERANCE = 0.005;

interface Cycle {
  readonly inlet: { readonly enthalpyJPerKg: number; readonly entropyJPerKgK: number };
  readonly outletEnthalpy: number;
  readonly highPressurePa: number;
  readonly efficiency: number;
}

function isentropicEnthalpy({ inlet, highPressurePa }: Cycle): number {
  const isobar = fluid.isobar();
  isobar.setPressurePa(highPressurePa);
  return isobar.enthalpyFromEntropyJPerKg(inlet.entropyJPerKgK);
}

function cop(cycle: Cycle): number {
  const work = (isentropicEnthalpy(cycle) - cycle.inlet.enthalpyJPerKg) / cycle.efficiency;
  return (cycle.inlet.enthalpyJPerKg - cycle.outletEnthalpy) / work;
}

function saturated(celsius: number, quality: number): ReturnType<typeof find> {
  return find('T,q', kelvinFromCelsius(celsius), quality);
}

describe('Moran, Shapiro, Boettner & Bailey, Fundamentals of Engineering Thermodynamics, 8th ed., ch. 10', () => {
  it('example 10.1: 0 and 26 °C ideal, COP 9.24', () => {
    const condenser = saturated(26, 0);
    const value = cop({
      inlet: saturated(0, 1),
      outletEnthalpy: condenser.enthalpyJPerKg,
      highPressurePa: condenser.pressurePa,
      efficiency: 1,
    });
    expect(Math.abs(value / 9.24 - 1)).toBeLessThan(COP_TOLERANCE);
  });

  it('example 10.2: -10 °C and 9 bar, COP 4.57', () => {
    const outletEnthalpy = find('p,q', 9e5, 0).enthalpyJPerKg;
    const value = cop({ inlet: saturated(-10, 1), outletEnthalpy, highPressurePa: 9e5, efficiency: 1 });
    expect(Math.abs(value / 4.57 - 1)).toBeLessThan(COP_TOLERANCE);
  });

  it('example 10.3: isentropic efficiency 0.80, liquid leaving at 30 °C, COP 3.86', () => {
    const outletEnthalpy = find('p,T', 9e5, kelvinFromCelsius(30)).enthalpyJPerKg;
    const value = cop({ inlet: saturated(-10, 1), outletEnthalpy, highPressurePa: 9e5, efficiency: 0.8 });
    expect(Math.abs(value / 3.86 - 1)).toBeLessThan(COP_TOLERANCE);
  });
});

describe('Cengel & Boles, Thermodynamics, ch. 11 (printed figures from memory)', () => {
  it('example 11-1: 0.14 and 0.8 MPa ideal, 0.05 kg/s, COP 3.97', () => {
    const inlet = find('p,q', 1.4e5, 1);
    const outletEnthalpy = find('p,q', 8e5, 0).enthalpyJPerKg;
    const cycle = { inlet, outletEnthalpy, highPressurePa: 8e5, efficiency: 1 };
    expect(Math.abs(cop(cycle) / 3.97 - 1)).toBeLessThan(COP_TOLERANCE);
    expect(0.05 * (inlet.enthalpyJPerKg - outletEnthalpy)).toBeCloseTo(7180, -2);
    expect(0.05 * (isentropicEnthalpy(cycle) - inlet.enthalpyJPerKg)).toBeCloseTo(1810, -2);
  });

  it('example 11-2: inlet -10 °C, outlet 50 °C, liquid 26 °C at 0.72 MPa, COP 3.93', () => {
    const inlet = find('p,T', 1.4e5, kelvinFromCelsius(-10));
    const discharge = find('p,T', 8e5, kelvinFromCelsius(50));
    const liquid = find('p,T', 7.2e5, kelvinFromCelsius(26));
    const work = discharge.enthalpyJPerKg - inlet.enthalpyJPerKg;
    const value = (inlet.enthalpyJPerKg - liquid.enthalpyJPerKg) / work;
    expect(Math.abs(value / 3.93 - 1)).toBeLessThan(COP_TOLERANCE);
    const ideal = isentropicEnthalpy({ inlet, outletEnthalpy: 0, highPressurePa: 8e5, efficiency: 1 });
    expect((ideal - inlet.enthalpyJPerKg) / work).toBeCloseTo(0.938, 2);
  });
});
