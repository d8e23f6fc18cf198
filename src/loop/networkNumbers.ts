/**
 * Where every changing number of a network stands: one Float64Array, seen through named views. A snapshot is a copy of
 * the array. Capacities are fixed, so adding a hose at run time moves nothing.
 */

/** Most vessels, cells and links a network can hold; vessel 0 is the room. */
export const CAPACITY = { vessels: 24, cells: 96, links: 48 } as const;
/** Numbers kept beside the network for whoever builds a car on it: air side, cabin, controls. */
export const RESERVE = 192;
export const LINK_MEMORY = 3;
/** Numbers of a metering device, by link: see meterNumbers.ts. */
export const METER_NUMBERS = 16;

/** Index into `totals`. */
export const TOTAL = {
  step: 0,
  roomPressurePa: 1,
  roomTemperatureK: 2,
  broughtInJ: 3,
  heatInJ: 4,
  workInJ: 5,
  ventedJ: 6,
  rejectedJ: 7,
  /** Largest relative volume error left by the pressure solver, and steps in which it gave up. */
  worstResidual: 8,
  unsolvedSteps: 9,
  /** First of six: kg brought in, by species. */
  broughtInKg: 10,
  /** First of six: kg that went to the room, by species. */
  ventedKg: 16,
  /** First of six: kg brought in, taken away, or that went to or came from the room, without sign. */
  crossedKg: 22,
  /** Heat through walls, heat given, work and enthalpy vented, without sign, J: what the energy error is measured by. */
  turnedJ: 28,
  /** kg of water in a kg of the room's dry air. */
  roomHumidityRatio: 29,
  /** Which foreign fluid there is, counted from 1 in `FOREIGN_IDS`; 0 none. */
  foreignFluid: 30,
  count: 31,
} as const;

export interface NetworkNumbers {
  readonly state: Float64Array;
  /** Partial pressure of the refrigerant, and of air and water vapour together, Pa. */
  readonly pressure: Float64Array;
  readonly airPressure: Float64Array;
  /** Rate of change in the last step, Pa/s: where the next search starts. */
  readonly pressureRate: Float64Array;
  /** kg that raise the refrigerant's pressure by one pascal, as the last search found it. */
  readonly compliance: Float64Array;
  /** Pa that one kg of air adds. */
  readonly airStiffness: Float64Array;
  /** Species 1..5 by vessel: `extra[species - 1][vessel]`. Foreign refrigerant counts in the cells' mass too. */
  readonly extra: readonly Float64Array[];
  /** By vessel, kg, as of the last step: refrigerant and foreign together, and what of it is liquid. */
  readonly held: Float64Array;
  readonly liquid: Float64Array;
  /** What a foreign fluid adds to the refrigerant's pressure, as a share of it. */
  readonly foreignFactor: Float64Array;
  /** Of a vessel's water, kg: as vapour, and in its desiccant; and what that can hold. */
  readonly steam: Float64Array;
  readonly adsorbed: Float64Array;
  readonly desiccant: Float64Array;
  /** Of a vessel's oil, kg: in the compressor at its end. */
  readonly sump: Float64Array;
  /** Refrigerant dissolved in the vessel's oil, kg, and its enthalpy, J. */
  readonly dissolved: Float64Array;
  readonly dissolvedHeat: Float64Array;
  readonly tilt: Float64Array;
  readonly shaking: Float64Array;

  readonly mass: Float64Array;
  readonly enthalpy: Float64Array;
  readonly temperature: Float64Array;
  /** dT/dh at the cell's state, K per (J/kg); 0 inside the dome. */
  readonly temperatureSlope: Float64Array;
  readonly volume: Float64Array;
  readonly wall: Float64Array;
  readonly surroundings: Float64Array;
  readonly outside: Float64Array;
  readonly heat: Float64Array;
  /** kg/s that went on to the next cell in the last step. */
  readonly flow: Float64Array;
  /** K that a wall's temperature could not hold in its last digit; made up in the next step. */
  readonly wallLeft: Float64Array;

  readonly opening: Float64Array;
  readonly speed: Float64Array;
  readonly linkFlow: Float64Array;
  readonly linkLiquid: Float64Array;
  readonly linkWork: Float64Array;
  /** Oil that went to the room along with it in the last step, kg. */
  readonly linkOil: Float64Array;
  /** Compressors only: share of the full stroke, leak through the reeds over their own, kg/s per Pa, and heat at the shaft, W. */
  readonly stroke: Float64Array;
  readonly reedLeak: Float64Array;
  readonly shaftHeat: Float64Array;
  readonly memory: Float64Array;
  readonly meter: Float64Array;

  readonly totals: Float64Array;
  readonly reserve: Float64Array;
}

export function createNumbers(): NetworkNumbers {
  const { vessels, cells, links } = CAPACITY;
  const length =
    21 * vessels + 11 * cells + (9 + LINK_MEMORY + METER_NUMBERS) * links + TOTAL.count + RESERVE;
  const state = new Float64Array(length);
  let used = 0;
  const take = (count: number): Float64Array => {
    used += count;
    return state.subarray(used - count, used);
  };
  return {
    state,
    pressure: take(vessels),
    airPressure: take(vessels),
    pressureRate: take(vessels),
    compliance: take(vessels),
    airStiffness: take(vessels),
    extra: [take(vessels), take(vessels), take(vessels), take(vessels), take(vessels)],
    held: take(vessels),
    liquid: take(vessels),
    foreignFactor: take(vessels),
    steam: take(vessels),
    adsorbed: take(vessels),
    desiccant: take(vessels),
    sump: take(vessels),
    dissolved: take(vessels),
    dissolvedHeat: take(vessels),
    tilt: take(vessels),
    shaking: take(vessels),
    mass: take(cells),
    enthalpy: take(cells),
    temperature: take(cells),
    temperatureSlope: take(cells),
    volume: take(cells),
    wall: take(cells),
    surroundings: take(cells),
    outside: take(cells),
    heat: take(cells),
    flow: take(cells),
    wallLeft: take(cells),
    opening: take(links),
    speed: take(links),
    linkFlow: take(links),
    linkLiquid: take(links),
    linkWork: take(links),
    linkOil: take(links),
    stroke: take(links),
    reedLeak: take(links),
    shaftHeat: take(links),
    memory: take(links * LINK_MEMORY),
    meter: take(links * METER_NUMBERS),
    totals: take(TOTAL.count),
    reserve: take(RESERVE),
  };
}
