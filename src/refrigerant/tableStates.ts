/** States from the run-time tables, for any of the five pairs, within the range of the tables. */
import { exp } from '../numerics/exp';
import { ln } from '../numerics/ln';
import { findRoot } from '../numerics/rootFinding';
import { checkRange } from './checkRange';
import type { FluidState, StateFinder } from './fluidState';
import { OutOfRangeError } from './outOfRangeError';
import type { Isobar, Refrigerant } from './refrigerant';

export function createTableStates(fluid: Refrigerant): StateFinder {
  const isobar = fluid.isobar();
  return (pair, first, second) => {
    if (pair === 'rho,u') return fromDensityEnergy(fluid, isobar, first, second);
    if (pair === 'T,q') {
      isobar.setPressurePa(fluid.saturationPressurePa(first));
      return fromQuality(fluid, isobar, second);
    }
    isobar.setPressurePa(first);
    if (pair === 'p,q') return fromQuality(fluid, isobar, second);
    if (pair === 'p,h') return stateAt(fluid, isobar, second);
    checkRange(
      fluid.id,
      'temperature',
      second,
      fluid.range.minTemperatureK,
      fluid.range.maxTemperatureK,
      'K',
    );
    return stateAt(fluid, isobar, isobar.enthalpyFromTemperatureJPerKg(second));
  };
}

function fromQuality(fluid: Refrigerant, isobar: Isobar, quality: number): FluidState {
  checkRange(fluid.id, 'quality', quality, 0, 1, 'kg/kg');
  const { liquidEnthalpyJPerKg: hl, vapourEnthalpyJPerKg: hv } = isobar;
  return stateAt(fluid, isobar, hl + quality * (hv - hl));
}

/** At given energy the volume falls as pressure rises, so one pressure fits. */
function fromDensityEnergy(fluid: Refrigerant, isobar: Isobar, density: number, energy: number): FluidState {
  const volume = 1 / density;
  const { minPressurePa: low, maxPressurePa: high } = fluid.range;
  const gap = (logPressure: number): number => {
    isobar.setPressurePa(Math.min(Math.max(exp(logPressure), low), high));
    return isobar.volumeM3PerKg(energy + isobar.pressurePa * volume) / volume - 1;
  };
  if (!(gap(ln(low)) >= 0)) throw new OutOfRangeError(fluid.id, 'pressure', 0, low, high, 'Pa');
  if (!(gap(ln(high)) <= 0))
    throw new OutOfRangeError(fluid.id, 'pressure', Number.POSITIVE_INFINITY, low, high, 'Pa');
  gap(findRoot(gap, ln(low), ln(high), 1e-13));
  return stateAt(fluid, isobar, energy + isobar.pressurePa * volume);
}

function stateAt(fluid: Refrigerant, isobar: Isobar, enthalpyJPerKg: number): FluidState {
  const temperatureK = isobar.temperatureK(enthalpyJPerKg);
  const quality = isobar.quality(enthalpyJPerKg);
  const { minTemperatureK, maxTemperatureK, minSaturationTemperatureK } = fluid.range;
  const inDome = quality >= 0 && quality <= 1;
  const lowest = inDome ? minSaturationTemperatureK : minTemperatureK;
  checkRange(fluid.id, 'temperature', temperatureK, lowest, maxTemperatureK, 'K');
  const volume = isobar.volumeM3PerKg(enthalpyJPerKg);
  return {
    pressurePa: isobar.pressurePa,
    temperatureK,
    densityKgPerM3: 1 / volume,
    enthalpyJPerKg,
    entropyJPerKgK: isobar.entropyJPerKgK(enthalpyJPerKg),
    internalEnergyJPerKg: enthalpyJPerKg - isobar.pressurePa * volume,
    quality: inDome ? quality : null,
    phase: inDome ? 'twoPhase' : quality < 0 ? 'liquid' : 'vapour',
  };
}
