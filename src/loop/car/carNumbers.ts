/**
 * Numbers of a car that are not in its vessels: what is set, what is worn, what the controls remember, the air. They
 * stand in the network's reserve, so one array is the whole car. A name gives its place.
 */
export const MOST_COIL_CELLS = 12;
const MOST_COILS = 2;

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
  'rearBlowerStep',
  'windowsOpen',
  'recirculated',
  'heaterShare',
  'airConditioningOn',
  // what faults leave or shift: see EDITS
  'fanHealth0',
  'fanHealth1',
  'fanHealth2',
  'condenserAirHealth',
  'coilAirHealth',
  'filterHealth',
  'blowerHealth',
  'meteringHealth',
  'meteringArea',
  'bulbCharge',
  'pumpingHealth',
  'clutchHealth',
  'liquidLineHealth',
  'drierHealth',
  'reedLeakKgPerSPa',
  'lowSwitchShiftPa',
  'fanLatePa',
  'finSwitchShiftK',
  'doorLeak',
  'valveLeastLift',
  'valveMostLift',
  'bulbLoose',
  'clutchStuck',
  'clutchCurrent',
  // water sprayed on the condenser, kg/s
  'sprayKgPerS',
  // 1: there is a high-pressure cut-out
  'highCutOut',
  // a wire across a pressure switch; the cooling system's own call for a fan, key or no key
  'lowBridged',
  'highBridged',
  'fanCalled',
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
  'clutchSlip',
  'clutchFaceK',
  'feltThermalK',
  // displacement or drive: share of the stroke, what its control remembers, the coil as its control feels it
  'strokeShare',
  'controlShare',
  'controlCoilK',
  // damage, by cause, as shares of what ends in seizure; and what leads up to it
  'wearSlug',
  'wearHeat',
  'wearDry',
  'wearVacuum',
  'slugKg',
  'sluggingKgPerS',
  'sluggedKg',
  'vacuumS',
  'dryS',
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
  'ventK',
  'rearInletK',
  'rearInletRatio',
  'rearOutletK',
  'rearOutletRatio',
  'rearFlow',
  'rearHeatW',
  'rearVentK',
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
/** First of the water and of the frost on each coil cell, kg; the front coil's, then the rear one's. */
export const WATER = NAMES.length;
export const FROST = WATER + MOST_COILS * MOST_COIL_CELLS;

/** Where the numbers of one coil and its air stand in the reserve. */
export interface CoilNumbers {
  readonly step: number;
  readonly inletK: number;
  readonly inletRatio: number;
  readonly outletK: number;
  readonly outletRatio: number;
  readonly flow: number;
  readonly heatW: number;
  readonly water: number;
  readonly frost: number;
}

export const FRONT_COIL: CoilNumbers = {
  step: AT.blowerStep,
  inletK: AT.coilInletK,
  inletRatio: AT.coilInletRatio,
  outletK: AT.coilOutletK,
  outletRatio: AT.coilOutletRatio,
  flow: AT.coilFlow,
  heatW: AT.coilHeatW,
  water: WATER,
  frost: FROST,
};

export const REAR_COIL: CoilNumbers = {
  step: AT.rearBlowerStep,
  inletK: AT.rearInletK,
  inletRatio: AT.rearInletRatio,
  outletK: AT.rearOutletK,
  outletRatio: AT.rearOutletRatio,
  flow: AT.rearFlow,
  heatW: AT.rearHeatW,
  water: WATER + MOST_COIL_CELLS,
  frost: FROST + MOST_COIL_CELLS,
};

/**
 * What a fault may edit, with the value that is sound and how two faults on one number meet: a product, a sum, the least
 * or the most. All four give the same in either order.
 */
export const EDITS = {
  // shares of what something sound does
  fanHealth0: { sound: 1, worst: 0, meet: 'product' },
  fanHealth1: { sound: 1, worst: 0, meet: 'product' },
  fanHealth2: { sound: 1, worst: 0, meet: 'product' },
  condenserAirHealth: { sound: 1, worst: 0.1, meet: 'product' },
  coilAirHealth: { sound: 1, worst: 0.02, meet: 'product' },
  filterHealth: { sound: 1, worst: 0.02, meet: 'product' },
  blowerHealth: { sound: 1, worst: 0, meet: 'product' },
  meteringHealth: { sound: 1, worst: 0.01, meet: 'product' },
  /** Area of the metering device over its own, tube or valve: 1 sound, above it is a larger one. */
  meteringArea: { sound: 1, worst: 8, meet: 'product' },
  bulbCharge: { sound: 1, worst: 0, meet: 'product' },
  pumpingHealth: { sound: 1, worst: 0, meet: 'product' },
  /** Share of the torque that a sound clutch can pass, and of the voltage that reaches its coil. */
  clutchHealth: { sound: 1, worst: 0, meet: 'product' },
  clutchCurrent: { sound: 1, worst: 0, meet: 'product' },
  liquidLineHealth: { sound: 1, worst: 0.005, meet: 'product' },
  drierHealth: { sound: 1, worst: 0.005, meet: 'product' },
  // leaks and shifts, added up
  reedLeakKgPerSPa: { sound: 0, worst: 2e-8, meet: 'sum' },
  /** Both set points of the low-pressure switch; below 0 it lets go too late, and the coil may freeze. */
  lowSwitchShiftPa: { sound: 0, worst: 8e5, meet: 'sum' },
  /** High side at which the condenser fans come on, over where they should, Pa; above 0 also where they run with the clutch. */
  fanLatePa: { sound: 0, worst: 1.5e6, meet: 'sum' },
  finSwitchShiftK: { sound: 0, worst: -10, meet: 'sum' },
  /** Share of the vents' air that comes past the heater. */
  doorLeak: { sound: 0, worst: 1, meet: 'sum' },
  // where something has stuck
  valveLeastLift: { sound: 0, worst: 1, meet: 'most' },
  valveMostLift: { sound: 1, worst: 0, meet: 'least' },
  /** How far the bulb hangs in the bay's air and not on its line, 0..1. */
  bulbLoose: { sound: 0, worst: 1, meet: 'most' },
  /** Share of its torque that the clutch passes with no current. */
  clutchStuck: { sound: 0, worst: 1, meet: 'most' },
} as const satisfies Partial<Record<CarNumber, Edit>>;

export interface Edit {
  readonly sound: number;
  /** Beyond anything a single fault does; where random runs may go. */
  readonly worst: number;
  readonly meet: 'product' | 'sum' | 'least' | 'most';
}
export type EditName = keyof typeof EDITS;
export const EDIT_NAMES = Object.keys(EDITS) as readonly EditName[];
