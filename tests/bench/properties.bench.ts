/**
 * What a property question costs, in nanoseconds: the least of many short runs, over R-134a states spread through the
 * dome, the liquid and the vapour between 50 kPa and 2 MPa.
 */
import '../../src/refrigerant/allFluids';
import { exp } from '../../src/numerics/exp';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { ln } from '../../src/numerics/ln';
import { refrigerant } from '../../src/refrigerant/fluids';

const STATES = 4096;
const QUESTIONS = 50 * STATES;
const RUNS = 25;

export function benchProperties(): Record<string, number> {
  const isobar = refrigerant('R-134a').isobar('continue');
  const pressures = new Float64Array(STATES);
  const enthalpies = new Float64Array(STATES);
  for (let i = 0; i < STATES; i++) {
    pressures[i] = 50e3 * exp(keyedUniform(1, 'bench', 'pressure', i) * ln(40));
    enthalpies[i] = 180e3 + 290e3 * keyedUniform(1, 'bench', 'enthalpy', i);
  }
  const out = new Float64Array(4);
  let sum = 0;

  const fullLookUpNs = least(() => {
    for (let i = 0; i < QUESTIONS; i++) {
      isobar.setPressurePa(pressures[i & (STATES - 1)]);
      isobar.lookUp(enthalpies[i & (STATES - 1)], out);
      sum += out[1];
    }
  });
  const setPressureNs = least(() => {
    for (let i = 0; i < QUESTIONS; i++) {
      isobar.setPressurePa(pressures[i & (STATES - 1)]);
      sum += isobar.saturationTemperatureK;
    }
  });
  isobar.setPressurePa(300e3);
  const volumeNs = least(() => {
    for (let i = 0; i < QUESTIONS; i++) sum += isobar.volumeM3PerKg(enthalpies[i & (STATES - 1)]);
  });
  const temperatureNs = least(() => {
    for (let i = 0; i < QUESTIONS; i++) sum += isobar.temperatureK(enthalpies[i & (STATES - 1)]);
  });
  if (!Number.isFinite(sum)) throw new Error('a property question had no number for an answer');
  return {
    randomLookUpWithDerivativesNs: fullLookUpNs,
    setPressureNs,
    volumeAtSharedPressureNs: volumeNs,
    temperatureAtSharedPressureNs: temperatureNs,
  };
}

function least(run: () => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < RUNS; i++) {
    const start = performance.now();
    run();
    best = Math.min(best, ((performance.now() - start) * 1e6) / QUESTIONS);
  }
  return best;
}
