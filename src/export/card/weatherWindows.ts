/**
 * What a sound car of this kind would show today, by the model: both gauges at rest and running, and the vent.
 *
 * At rest: the saturation line at the air's temperature, less the atmosphere. Running: ten minutes at 1,500 rpm, door
 * windows open, blower full, air recirculated; the lowest and highest of the last two minutes, 15 % either way for the
 * gauges and 2 K for the vent, as wide as printed service bands. It is a car of that kind and not the real one: bore,
 * condenser and fan of that one are its own.
 *
 * Atmosphere at height z: p0 (1 - 2.25577e-5 z)^5.25588 (international standard atmosphere).
 */
import { type VehicleData, vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { runLoop } from '../../plant/runLoop';
import type { Refrigerant, RefrigerantId } from '../../refrigerant/refrigerant';
import { type CardInputs, filledWith } from './cardInputs';

export interface WeatherWindows {
  readonly restGaugePa: number;
  readonly low: Window;
  readonly high: Window;
  readonly vent: { readonly fromK: number; readonly toK: number };
  /** Which car of the program it was. */
  readonly vehicle: string;
}

export interface Window {
  readonly fromGaugePa: number;
  readonly toGaugePa: number;
}

const BRACKET = 0.15;
const VENT_K = 2;
const ENGINE_REV_PER_S = 25;
const MINUTE_S = 60;
const SEA_LEVEL_PA = 101_325;

export const atmosphereAt = (altitudeM: number): number =>
  SEA_LEVEL_PA * (1 - 2.25577e-5 * altitudeM) ** 5.25588;

/** The nearest car that ships: its metering, then what is in it, then the plainest. */
export function carOfKind({ loop, labelRefrigerant }: CardInputs, filled: RefrigerantId): VehicleData {
  const unlike = ({ metering, label, compressor, rear }: VehicleData): number =>
    (metering.kind === loop ? 0 : 8) +
    (label.refrigerant === filled ? 0 : label.refrigerant === labelRefrigerant ? 2 : 4) +
    (rear === undefined ? 0 : 1) +
    (compressor.kind === 'fixed' ? 0 : compressor.kind === 'variable' ? 1 : 3);
  const cars = vehicleIds.map(vehicleOf);
  return cars.reduce((best, car) => (unlike(car) < unlike(best) ? car : best));
}

export function weatherWindows(inputs: CardInputs, fluid: Refrigerant): WeatherWindows {
  const { ambientK, relativeHumidity, altitudeM, convertedShare } = inputs;
  const filled = filledWith(inputs);
  const atmospherePa = atmosphereAt(altitudeM);
  const car = carOfKind(inputs, filled);
  const isConverted = car.label.refrigerant === 'R-12' && filled !== 'R-12';
  const { lowSideGaugePa, highSideGaugePa, ventK } = runLoop({
    vehicle: car.id,
    refrigerant: filled,
    ambientK,
    relativeHumidity,
    atmospherePa,
    engineRevPerS: ENGINE_REV_PER_S,
    durationS: 10 * MINUTE_S,
    averageS: 2 * MINUTE_S,
    cabin: 'open',
    chargeShare: isConverted ? convertedShare : 1,
    faults: [],
    start: 'equalised',
  });
  return {
    restGaugePa: fluid.saturationPressurePa(ambientK) - atmospherePa,
    low: wide(lowSideGaugePa),
    high: wide(highSideGaugePa),
    vent: { fromK: ventK - VENT_K, toK: ventK + VENT_K },
    vehicle: car.id,
  };
}

const wide = ({ min, max }: { readonly min: number; readonly max: number }): Window => ({
  fromGaugePa: (1 - BRACKET) * min,
  toGaugePa: (1 + BRACKET) * max,
});
