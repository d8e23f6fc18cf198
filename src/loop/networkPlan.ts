/**
 * The fixed side of a network: what each slot is. Filled from specs, never part of the state. The march reads these
 * arrays, so a cell is a row of numbers and a vessel a run of rows.
 */
import type { Isobar, Refrigerant } from '../refrigerant/refrigerant';
import { CAPACITY } from './networkNumbers';
import type { CellSpec, LinkSpec, Port, VesselSpec } from './networkTypes';

const DEFAULT_SLIP_AT_REST = 1;
const DEFAULT_BLEND = 0.05;
const DEFAULT_ASPECT = 0.5;

export interface NetworkPlan {
  readonly vesselSpecs: (VesselSpec | undefined)[];
  readonly linkSpecs: (LinkSpec | undefined)[];
  /** One pressure cursor a vessel, always at its refrigerant pressure of the last finished step. */
  readonly isobars: Isobar[];
  readonly firstCell: Int32Array;
  readonly cellCount: Int32Array;
  readonly elasticity: Float64Array;
  /** Oil that belongs in the compressor at its end (0: no compressor), and on its walls; kg. */
  readonly sumpOil: Float64Array;
  readonly filmOil: Float64Array;
  /** Cell in which free water collects. */
  readonly waterCell: Int32Array;
  /** Slot of the next cell, -1 at the end of the tree. */
  readonly next: Int32Array;
  readonly isPot: Uint8Array;
  readonly cellVolume: Float64Array;
  readonly wallHeat: Float64Array;
  readonly boiling: Float64Array;
  readonly vapourSide: Float64Array;
  readonly liquidSide: Float64Array;
  readonly slipAtRest: Float64Array;
  readonly outletHeight: Float64Array;
  readonly outletBlend: Float64Array;
  readonly aspect: Float64Array;
  readonly bleed: Float64Array;
  /** Slots in use, ascending; `solveOrder` has the vessels by rising volume. */
  vesselSlots: number[];
  linkSlots: number[];
  /** Slots of links by id. */
  readonly linkByName: Map<string, number>;
  /** Links at each vessel. */
  readonly linksAt: Int32Array;
  solveOrder: number[];
}

export function createPlan(refrigerant: Refrigerant): NetworkPlan {
  const { vessels, cells, links } = CAPACITY;
  const row = (): Float64Array => new Float64Array(cells);
  return {
    vesselSpecs: new Array<VesselSpec | undefined>(vessels).fill(undefined),
    linkSpecs: new Array<LinkSpec | undefined>(links).fill(undefined),
    isobars: Array.from({ length: vessels }, () => refrigerant.isobar('continue')),
    firstCell: new Int32Array(vessels),
    cellCount: new Int32Array(vessels),
    elasticity: new Float64Array(vessels),
    sumpOil: new Float64Array(vessels),
    filmOil: new Float64Array(vessels),
    waterCell: new Int32Array(vessels),
    next: new Int32Array(cells).fill(-1),
    isPot: new Uint8Array(cells),
    cellVolume: row(),
    wallHeat: row(),
    boiling: row(),
    vapourSide: row(),
    liquidSide: row(),
    slipAtRest: row(),
    outletHeight: row(),
    outletBlend: row(),
    aspect: row(),
    bleed: row(),
    vesselSlots: [],
    linkSlots: [],
    linkByName: new Map(),
    linksAt: new Int32Array(CAPACITY.vessels),
    solveOrder: [],
  };
}

/** Lowest free slot and the first run of free cells long enough, or a typed complaint. */
export function findRoomFor(plan: NetworkPlan, cellCount: number): { slot: number; firstCell: number } {
  let slot = 1;
  while (slot < CAPACITY.vessels && plan.vesselSpecs[slot]) slot++;
  if (slot >= CAPACITY.vessels)
    throw new RangeError(`a network holds at most ${CAPACITY.vessels - 1} vessels`);
  const taken = new Uint8Array(CAPACITY.cells);
  for (const v of plan.vesselSlots) taken.fill(1, plan.firstCell[v], plan.firstCell[v] + plan.cellCount[v]);
  for (let first = 0; first + cellCount <= CAPACITY.cells; first++) {
    if (taken.subarray(first, first + cellCount).every((t) => t === 0)) return { slot, firstCell: first };
  }
  throw new RangeError(`a network holds at most ${CAPACITY.cells} cells`);
}

/** Enters a vessel in the plan. Its cells must drain towards its last one. */
export function enterVessel(plan: NetworkPlan, slot: number, firstCell: number, spec: VesselSpec): void {
  plan.vesselSpecs[slot] = spec;
  plan.firstCell[slot] = firstCell;
  plan.cellCount[slot] = spec.cells.length;
  plan.elasticity[slot] = spec.elasticityPerPa ?? 0;
  plan.sumpOil[slot] = spec.sumpOilKg ?? 0;
  plan.filmOil[slot] = spec.filmOilKg ?? 0;
  plan.waterCell[slot] = firstCell + waterCellOf(spec);
  spec.cells.forEach((cell, i) => {
    enterCell(plan, firstCell + i, cell);
    plan.next[firstCell + i] = i === spec.cells.length - 1 ? -1 : firstCell + nextOf(spec, i);
  });
  refreshSlots(plan);
}

export function leaveVessel(plan: NetworkPlan, slot: number): void {
  plan.vesselSpecs[slot] = undefined;
  plan.cellCount[slot] = 0;
  refreshSlots(plan);
}

export function refreshSlots(plan: NetworkPlan): void {
  plan.vesselSlots = slotsOf(plan.vesselSpecs);
  plan.linkSlots = slotsOf(plan.linkSpecs);
  plan.linkByName.clear();
  plan.linksAt.fill(0);
  for (const slot of plan.linkSlots) {
    const spec = plan.linkSpecs[slot];
    if (!spec) continue;
    plan.linkByName.set(spec.id, slot);
    plan.linksAt[spec.from.vessel] += 1;
    plan.linksAt[spec.to.vessel] += 1;
  }
  plan.solveOrder = [...plan.vesselSlots].sort((a, b) => volumeOf(plan, a) - volumeOf(plan, b) || a - b);
}

export function volumeOf(plan: NetworkPlan, vessel: number): number {
  let sum = 0;
  const first = plan.firstCell[vessel];
  for (let c = first; c < first + plan.cellCount[vessel]; c++) sum += plan.cellVolume[c];
  return sum;
}

/** Absolute cell slot of a port; -1 for the room. */
export function cellOfPort(plan: NetworkPlan, port: Port): number {
  if (port.vessel === 0) return -1;
  if (!plan.vesselSpecs[port.vessel] || port.cell < 0 || port.cell >= plan.cellCount[port.vessel]) {
    throw new RangeError(`no cell ${port.cell} in vessel ${port.vessel}`);
  }
  return plan.firstCell[port.vessel] + port.cell;
}

/** Water lies in a reservoir if there is one, else in the last cell where liquid stands. */
function waterCellOf({ cells }: VesselSpec): number {
  const reservoir = cells.findIndex(({ atRest }) => atRest === 'reservoir');
  if (reservoir >= 0) return reservoir;
  const wet = cells.findLastIndex(({ atRest = 'wet' }) => atRest === 'wet');
  return wet >= 0 ? wet : 0;
}

function enterCell(plan: NetworkPlan, c: number, cell: CellSpec): void {
  plan.isPot[c] = cell.kind === 'pot' ? 1 : 0;
  plan.cellVolume[c] = cell.volumeM3;
  plan.wallHeat[c] = cell.wallHeatCapacityJPerK;
  plan.boiling[c] = cell.insideWPerK[0];
  plan.vapourSide[c] = cell.insideWPerK[1];
  plan.liquidSide[c] = cell.insideWPerK[2];
  plan.slipAtRest[c] = cell.slipAtRest ?? DEFAULT_SLIP_AT_REST;
  plan.outletHeight[c] = cell.outletHeight ?? 1;
  plan.outletBlend[c] = cell.outletBlend ?? DEFAULT_BLEND;
  plan.aspect[c] = cell.aspect ?? DEFAULT_ASPECT;
  plan.bleed[c] = cell.liquidBleed ?? 0;
}

function nextOf(spec: VesselSpec, i: number): number {
  const target = spec.cells[i].drainsTo;
  if (target === undefined) return i + 1;
  const found = spec.cells.findIndex((cell) => cell.id === target);
  if (found <= i)
    throw new RangeError(`cell ${spec.cells[i].id} must drain to a later cell, not to ${target}`);
  return found;
}

function slotsOf(specs: readonly unknown[]): number[] {
  const slots: number[] = [];
  for (let i = 0; i < specs.length; i++) if (specs[i]) slots.push(i);
  return slots;
}
