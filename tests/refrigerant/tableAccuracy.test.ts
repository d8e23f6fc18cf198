/**
 * The run-time tables against their own equation of state at keyed random states: 20 Pa to 0.96 of critical pressure,
 * liquid from 200 K, vapour to the equation's highest temperature; and liquid compressed far over that.
 */
import { describe, expect, it } from 'vitest';
import { exp } from '../../src/numerics/exp';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { ln } from '../../src/numerics/ln';
import { FLUID_DATA } from '../../src/refrigerant/eos/fluidData';
import { createHelmholtz } from '../../src/refrigerant/eos/helmholtz';
import { createSaturationLine } from '../../src/refrigerant/eos/saturationLine';
import { solvePressureTemperature } from '../../src/refrigerant/eos/singlePhase';
import { REFRIGERANT_IDS, refrigerant } from '../../src/refrigerant/fluids';

const STATES = 3000;
const TEMPERATURE = 2e-4;
const DENSITY = 5e-4;
const ENTHALPY_J_PER_KG = 20;
const ENTROPY_J_PER_KG_K = 0.1;
const SLOPE = 0.02;

describe.each(REFRIGERANT_IDS)('tables of %s against the equation', (id) => {
  const data = FLUID_DATA[id];
  const fluid = refrigerant(id);
  const { range } = fluid;
  const line = createSaturationLine(data);
  const state = createHelmholtz(data);
  const draw = (purpose: string, step: number): number => keyedUniform(1, purpose, id, step);
  const randomPressure = (step: number, low: number): number =>
    low * exp(draw('pressure', step) * ln(range.maxPressurePa / low));

  interface Errors {
    temperature: number;
    density: number;
    enthalpy: number;
    entropy: number;
    slope: number;
    wrongPhase: number;
  }

  function note(errors: Errors, isobar: ReturnType<typeof fluid.isobar>, phase: 'liquid' | 'vapour'): void {
    const h = state.enthalpyJPerKg;
    const quality = isobar.quality(h);
    if (phase === 'liquid' ? quality > 0 : quality < 1) errors.wrongPhase++;
    const at = (name: keyof Errors, value: number): void => {
      if (!(Math.abs(value) <= errors[name])) errors[name] = Math.abs(value);
    };
    at('temperature', isobar.temperatureK(h) / state.temperatureK - 1);
    at('density', isobar.volumeM3PerKg(h) * state.densityKgPerM3 - 1);
    at('enthalpy', isobar.enthalpyFromTemperatureJPerKg(isobar.temperatureK(h)) - h);
    at('enthalpy', (isobar.temperatureK(h) - state.temperatureK) * state.heatCapacityPressureJPerKgK());
    at('entropy', isobar.entropyJPerKgK(h) - state.entropyJPerKgK);
    at('slope', isobar.temperatureSlope(h) * state.heatCapacityPressureJPerKgK() - 1);
  }

  const none = (): Errors => ({
    temperature: 0,
    density: 0,
    enthalpy: 0,
    entropy: 0,
    slope: 0,
    wrongPhase: 0,
  });

  function expectSmall(errors: Errors): void {
    expect(errors.wrongPhase).toBe(0);
    expect(errors.temperature).toBeLessThan(TEMPERATURE);
    expect(errors.density).toBeLessThan(DENSITY);
    expect(errors.enthalpy).toBeLessThan(ENTHALPY_J_PER_KG);
    expect(errors.entropy).toBeLessThan(ENTROPY_J_PER_KG_K);
    expect(errors.slope).toBeLessThan(SLOPE);
  }

  it('in vapour', () => {
    const isobar = fluid.isobar();
    const errors = none();
    for (let i = 0; i < STATES; i++) {
      const pressurePa = randomPressure(i, range.minPressurePa);
      const { temperatureK, vapour } = line.solvePressure(pressurePa);
      const share = draw('superheat', i);
      const t = temperatureK + 0.01 + (range.maxTemperatureK - temperatureK - 0.01) * share * share;
      solvePressureTemperature(state, pressurePa, t, (vapour.densityKgPerM3 * temperatureK) / t);
      isobar.setPressurePa(pressurePa);
      note(errors, isobar, 'vapour');
    }
    expectSmall(errors);
  });

  it('in liquid', () => {
    const isobar = fluid.isobar();
    const errors = none();
    const low = fluid.saturationPressurePa(range.minTemperatureK + 1);
    for (let i = 0; i < STATES; i++) {
      const pressurePa = randomPressure(i, low);
      const warmest = line.solvePressure(pressurePa).temperatureK - 0.01;
      const t = range.minTemperatureK + (warmest - range.minTemperatureK) * draw('subcooling', i);
      solvePressureTemperature(state, pressurePa, t, line.solveTemperature(t).liquid.densityKgPerM3);
      isobar.setPressurePa(pressurePa);
      note(errors, isobar, 'liquid');
    }
    expectSmall(errors);
  });

  it('in liquid compressed up to three times the critical pressure, with the right stiffness', () => {
    const isobar = fluid.isobar('continue');
    const errors = none();
    let stiffness = 0;
    for (let i = 0; i < STATES; i++) {
      const pressurePa = fluid.criticalPressurePa * (1 + 2 * draw('over', i));
      const t =
        range.minTemperatureK +
        (0.9 * fluid.criticalTemperatureK - range.minTemperatureK) * draw('warmth', i);
      solvePressureTemperature(state, pressurePa, t, line.solveTemperature(t).liquid.densityKgPerM3);
      isobar.setPressurePa(pressurePa);
      note(errors, isobar, 'liquid');
      stiffness = Math.max(stiffness, Math.abs(isentropicStiffness() / soundStiffness() - 1));
    }
    expectSmall(errors);
    expect(stiffness).toBeLessThan(0.01);

    /** -v dp/dv at constant entropy from two neighbouring table states. */
    function isentropicStiffness(): number {
      const entropy = isobar.entropyJPerKgK(state.enthalpyJPerKg);
      const step = 0.01 * state.pressurePa;
      const before = volumeAt(state.pressurePa - step, entropy);
      const after = volumeAt(state.pressurePa + step, entropy);
      return (step * (before + after)) / (before - after);
    }

    function volumeAt(pressurePa: number, entropy: number): number {
      isobar.setPressurePa(pressurePa);
      return isobar.volumeM3PerKg(isobar.enthalpyFromEntropyJPerKg(entropy));
    }

    function soundStiffness(): number {
      const w = state.soundSpeedMPerS();
      return w * w * state.densityKgPerM3;
    }
  });

  it('on the saturation line', () => {
    const isobar = fluid.isobar();
    for (let i = 0; i < STATES; i++) {
      isobar.setPressurePa(randomPressure(i, range.minPressurePa));
      const { temperatureK, liquid, vapour } = line.solvePressure(isobar.pressurePa);
      expect(Math.abs(isobar.saturationTemperatureK / temperatureK - 1)).toBeLessThan(1e-5);
      expect(Math.abs(isobar.liquidVolumeM3PerKg * liquid.densityKgPerM3 - 1)).toBeLessThan(DENSITY);
      expect(Math.abs(isobar.vapourVolumeM3PerKg * vapour.densityKgPerM3 - 1)).toBeLessThan(DENSITY);
      expect(Math.abs(isobar.liquidEnthalpyJPerKg - liquid.enthalpyJPerKg)).toBeLessThan(ENTHALPY_J_PER_KG);
      expect(Math.abs(isobar.vapourEnthalpyJPerKg - vapour.enthalpyJPerKg)).toBeLessThan(ENTHALPY_J_PER_KG);
      expect(Math.abs(isobar.vapourEntropyJPerKgK - vapour.entropyJPerKgK)).toBeLessThan(ENTROPY_J_PER_KG_K);
    }
  });
});
