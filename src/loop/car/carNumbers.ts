/**
 * Numbers of a car that are not in its vessels: what is set, what is worn, what the controls remember, the air. They
 * stand in the network's reserve, so one array is the whole car. A name gives its place.
 */
export const MOST_COIL_CELLS = 12;

const NAMES = [
  // set from outside
  'ambientK',
  'ambientHumidityRatio',
  'ambientPressurePa',
  'sunW',
  'occupants',
  'roadSpeedMPerS',
  'engineRevPerS',
  'blowerStep',
  'windowsOpen',
  'recirculated',
  'airConditioningOn',
  // sound is 1; faults multiply
  'fanHealth0',
  'fanHealth1',
  'fanHealth2',
  'condenserAirHealth',
  'meteringHealth',
  'pumpingHealth',
  'clutchHealth',
  // water sprayed on the condenser, kg/s
  'sprayKgPerS',
  // controls: 1 closed or running
  'lowSwitch',
  'highSwitch',
  'finSwitch',
  'thermalSwitch',
  'feltLowPa',
  'feltFinK',
  'clutchIn',
  'compressorRevPerS',
  'clutchCycles',
  'clutchOnS',
  'fanWanted0',
  'fanWanted1',
  'fanWanted2',
  'fanSpeed0',
  'fanSpeed1',
  'fanSpeed2',
  // air
  'condenserInletK',
  'condenserOutletK',
  'condenserFlow',
  'condenserHeatW',
  'coilInletK',
  'coilInletRatio',
  'coilOutletK',
  'coilOutletRatio',
  'coilFlow',
  'coilHeatW',
  'drainedKg',
  'cabinK',
  'cabinRatio',
  'interiorK',
  'engineK',
  'bayK',
  'elapsedS',
  // steps until the air is looked at again
  'airWait',
] as const;

export type CarNumber = (typeof NAMES)[number];

/** Index of each name in the reserve. */
export const AT = Object.fromEntries(NAMES.map((name, i) => [name, i])) as Readonly<
  Record<CarNumber, number>
>;
/** First of the water and of the frost on each coil cell, kg. */
export const WATER = NAMES.length;
export const FROST = WATER + MOST_COIL_CELLS;

/** What faults may multiply; 1 is sound. */
export const HEALTH_NAMES = [
  'fanHealth0',
  'fanHealth1',
  'fanHealth2',
  'condenserAirHealth',
  'meteringHealth',
  'pumpingHealth',
  'clutchHealth',
] as const satisfies readonly CarNumber[];
export type HealthName = (typeof HEALTH_NAMES)[number];
