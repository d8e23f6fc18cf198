/** What the parts of the integrator share: the numbers, the plan, and room to work in. Nothing here is public. */
import type { Isobar, Refrigerant } from '../refrigerant/refrigerant';
import type { MarchScratch } from './march';
import { createInlet, createUpstream, type MeteringInlet, type UpstreamOfLine } from './meteringInlet';
import { CAPACITY, createNumbers, type NetworkNumbers, TOTAL } from './networkNumbers';
import { createPlan, type NetworkPlan } from './networkPlan';
import { SPECIES } from './networkTypes';
import { type CompressorPoint, createCompressorPoint } from './pistonCompressor';
import { createDraw, type PortDraw } from './portDraw';

export const MOST_PRESSURE_SHARE = 0.985;
/** Far under anything a pump reaches: at the floor a cell holds less than its pressure says, so the floor is kept low. */
export const LEAST_PRESSURE_PA = 0.05;

/** Links driven by a pressure difference, worked out at the start of a step. Indexed by link slot. */
export interface DriveScratch {
  /** kg/s per Pa, air included, the other vessel's give taken into account. */
  readonly gain: Float64Array;
  /** Pressure at the far end, Pa, and sign of the flow into the owner: +1, -1, 0 none. */
  readonly farPa: Float64Array;
  readonly sign: Float64Array;
  /** Of what flows: J/kg of refrigerant, kg of air and of liquid per kg; most kg of refrigerant and of air in this step. */
  readonly enthalpy: Float64Array;
  readonly airShare: Float64Array;
  /** Gas constant of that air (water vapour included) over that of dry air. */
  readonly airGas: Float64Array;
  readonly liquidShare: Float64Array;
  readonly most: Float64Array;
  readonly mostAir: Float64Array;
  /** kg of refrigerant and of air that moved into the owner in this step. */
  readonly moved: Float64Array;
  readonly movedAir: Float64Array;
  /** Owner of each link (vessel slot), 0 for none. */
  readonly owner: Int32Array;
}

/** What an expansion valve's bulb is filled with: a cursor on its saturation line, and how far that goes. */
export interface BulbFluid {
  readonly cursor: Isobar;
  readonly mostPressurePa: number;
}

export interface NetworkCore {
  readonly refrigerant: Refrigerant;
  readonly numbers: NetworkNumbers;
  readonly plan: NetworkPlan;
  readonly scratch: MarchScratch;
  readonly drive: DriveScratch;
  /** Brought to each vessel in this step, kg: air, water vapour; and species by number (foreign, all water, oil, sealant). */
  readonly airSource: Float64Array;
  readonly steamSource: Float64Array;
  /** kg of refrigerant that links have brought so far in this step. */
  readonly massSource: Float64Array;
  readonly speciesSource: readonly Float64Array[];
  /** What links with a fixed flow bring to a one-cell vessel, kg and J, by vessel. */
  readonly fixedMass: Float64Array;
  readonly fixedHeat: Float64Array;
  /** Heat that machines put straight into a cell's wall in this step, J, by cell. */
  readonly bodyHeat: Float64Array;
  readonly links: LinkTable;
  /** Driven links by owner, ascending. Refreshed when the structure changes. */
  owned: number[][];
  readonly probe: Isobar;
  /** By link slot; only expansion valves have one. */
  readonly bulbs: BulbFluid[];
  readonly draw: PortDraw;
  readonly inlet: MeteringInlet;
  readonly upstream: UpstreamOfLine;
  readonly compressor: CompressorPoint;
  readonly mostPressurePa: number;
}

/** Ports of the links as numbers; height below 0 means bulk. */
export interface LinkTable {
  readonly fromVessel: Int32Array;
  readonly fromCell: Int32Array;
  readonly fromHeight: Float64Array;
  readonly toVessel: Int32Array;
  readonly toCell: Int32Array;
  readonly toHeight: Float64Array;
  readonly bulbCell: Int32Array;
}

export function createCore(refrigerant: Refrigerant): NetworkCore {
  const { cells, links, vessels } = CAPACITY;
  const perCell = (): Float64Array => new Float64Array(cells);
  const perLink = (): Float64Array => new Float64Array(links);
  return {
    refrigerant,
    numbers: createNumbers(),
    plan: createPlan(refrigerant),
    scratch: {
      sourceMass: perCell(),
      sourceHeat: perCell(),
      wallGain: perCell(),
      slip: perCell(),
      arrivingMass: perCell(),
      arrivingHeat: perCell(),
      newMass: perCell(),
      newHeat: perCell(),
      wallHeat: perCell(),
      sent: perCell(),
      volume: perCell(),
    },
    drive: {
      gain: perLink(),
      farPa: perLink(),
      sign: perLink(),
      enthalpy: perLink(),
      airShare: perLink(),
      airGas: perLink(),
      liquidShare: perLink(),
      most: perLink(),
      mostAir: perLink(),
      moved: perLink(),
      movedAir: perLink(),
      owner: new Int32Array(links),
    },
    airSource: new Float64Array(vessels),
    steamSource: new Float64Array(vessels),
    massSource: new Float64Array(vessels),
    speciesSource: SPECIES.map(() => new Float64Array(vessels)),
    fixedMass: new Float64Array(vessels),
    fixedHeat: new Float64Array(vessels),
    bodyHeat: perCell(),
    links: {
      fromVessel: new Int32Array(links),
      fromCell: new Int32Array(links),
      fromHeight: perLink(),
      toVessel: new Int32Array(links),
      toCell: new Int32Array(links),
      toHeight: perLink(),
      bulbCell: new Int32Array(links),
    },
    owned: Array.from({ length: vessels }, () => []),
    probe: refrigerant.isobar('continue'),
    bulbs: [],
    draw: createDraw(),
    inlet: createInlet(),
    upstream: createUpstream(),
    compressor: createCompressorPoint(),
    mostPressurePa: MOST_PRESSURE_SHARE * refrigerant.criticalPressurePa,
  };
}

export function bulbFilledWith(fluid: Refrigerant): BulbFluid {
  return {
    cursor: fluid.isobar('continue'),
    mostPressurePa: MOST_PRESSURE_SHARE * fluid.criticalPressurePa,
  };
}

/** Total pressure of a vessel at the end of the last step, Pa. */
export function totalPressurePa(core: NetworkCore, vessel: number): number {
  const { numbers } = core;
  if (vessel === 0) return numbers.totals[TOTAL.roomPressurePa];
  return numbers.pressure[vessel] * (1 + numbers.foreignFactor[vessel]) + numbers.airPressure[vessel];
}
