/**
 * What a property question costs by region, in nanoseconds: temperature, volume and both slopes of R-134a at a new
 * pressure, and at a pressure that is already set.
 */
import '../../src/refrigerant/allFluids';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { refrigerant } from '../../src/refrigerant/fluids';
import { figures, timed } from './timing';

const STATES = 4096;
const CALLS = 50_000;
const ROUNDS = 25;

/** Pressure, Pa, and enthalpy as quality (under 0 subcooled, over 1 superheated), lowest and highest. */
const REGIONS = {
  liquid: { pressure: [0.3e6, 2.5e6], quality: [-0.3, -0.02] },
  'two-phase': { pressure: [0.15e6, 2.5e6], quality: [0.02, 0.98] },
  vapour: { pressure: [0.15e6, 2.5e6], quality: [1.02, 1.4] },
  'near critical': { pressure: [3.4e6, 3.95e6], quality: [-0.5, 1.5] },
  random: { pressure: [0.05e6, 3.9e6], quality: [-0.3, 1.4] },
} as const;

export function properties(): Record<string, number> {
  return Object.assign({}, ...Object.entries(REGIONS).map(([name, region]) => costOf(name, region)));
}

function costOf(name: string, { pressure, quality }: (typeof REGIONS)[keyof typeof REGIONS]) {
  const isobar = refrigerant('R-134a').isobar('continue');
  const pressures = draws('pressure', pressure);
  const qualities = draws('quality', quality);
  const enthalpies = qualities.map((x, i) => {
    isobar.setPressurePa(pressures[i]);
    const { liquidEnthalpyJPerKg: hl, vapourEnthalpyJPerKg: hv } = isobar;
    return hl + x * (hv - hl);
  });
  const out = new Float64Array(4);
  const anew = timed(CALLS, ROUNDS, (i) => {
    isobar.setPressurePa(pressures[i & (STATES - 1)]);
    isobar.lookUp(enthalpies[i & (STATES - 1)], out);
    return out[1];
  });
  isobar.setPressurePa(0.5 * (pressure[0] + pressure[1]));
  const { liquidEnthalpyJPerKg: hl, vapourEnthalpyJPerKg: hv } = isobar;
  const beside = qualities.map((x) => hl + x * (hv - hl));
  const shared = timed(CALLS, ROUNDS, (i) => {
    isobar.lookUp(beside[i & (STATES - 1)], out);
    return out[1];
  });
  return {
    ...figures(`${name}, new pressure`, 'ns', anew),
    ...figures(`${name}, shared pressure`, 'ns', shared),
  };
}

function draws(purpose: string, [low, high]: readonly [number, number]): Float64Array {
  return Float64Array.from(
    { length: STATES },
    (_, i) => low + (high - low) * keyedUniform(1, purpose, 'bench', i),
  );
}
