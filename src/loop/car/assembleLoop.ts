/** Builds a car's two vessels, its metering devices, compressor and relief valve from vehicle data. */
import type { Network } from '../network';
import {
  type CellSpec,
  type Contents,
  type LinkIndex,
  type Port,
  ROOM,
  type VesselIndex,
  type VesselSpec,
} from '../networkTypes';
import { type BranchPart, lowSideOf, type Side } from './lowSide';
import type { ComponentData, VehicleData } from './vehicles';

export interface CarPart {
  readonly part: string;
  readonly vessel: VesselIndex;
  readonly firstCell: number;
  readonly cells: number;
  readonly around: ComponentData['around'];
  /** W/K to the air of the bay, a cell. */
  readonly outsideWPerK: number;
}

export interface CarPort {
  readonly id: string;
  readonly port: Port;
}

export interface CarLoop {
  readonly high: VesselIndex;
  readonly low: VesselIndex;
  readonly metering: LinkIndex;
  /** Of the rear unit; -1 where there is none. */
  readonly rearMetering: LinkIndex;
  readonly compressor: LinkIndex;
  readonly relief: LinkIndex;
  readonly parts: readonly CarPart[];
  readonly ports: readonly CarPort[];
}

/** Oil on the walls of a side with which they carry heat as they should, over all that belongs in the loop [guess]. */
const HIGH_FILM = 0.1;
const LOW_FILM = 0.8;

export interface LoopContents {
  readonly high: Contents;
  readonly low: Contents;
}

export function sideSpec(side: Side): VesselSpec {
  return { id: side.id, cells: side.parts.flatMap(cellsOf) };
}

export function assembleLoop(network: Network, vehicle: VehicleData, contents: LoopContents): CarLoop {
  const { oil } = vehicle.compressor;
  const high = network.addVessel(
    { ...sideSpec(vehicle.highSide), filmOilKg: HIGH_FILM * oil },
    contents.high,
  );
  const lowSide = lowSideOf(vehicle);
  const low = network.addVessel(
    { ...sideSpec(lowSide), sumpOilKg: oil, filmOilKg: LOW_FILM * oil },
    contents.low,
  );
  const parts = [...partsOf(vehicle.highSide.parts, high), ...partsOf(lowSide.parts, low)];
  const highEnd: Port = { vessel: high, cell: network.cellCount(high) - 1, height: 'bulk' };
  const lowEnd: Port = {
    vessel: low,
    cell: network.cellCount(low) - 1,
    height: vehicle.lowSide.parts.at(-1)?.outletHeight ?? 'top',
  };
  const highStart: Port = { vessel: high, cell: 0, height: 'bulk' };
  const lowStart: Port = { vessel: low, cell: 0, height: 'bulk' };
  return {
    high,
    low,
    parts,
    metering: addMetering(network, 'metering', vehicle.metering, parts, highEnd, lowStart),
    rearMetering: addRearMetering(network, vehicle, parts, highEnd),
    compressor: addCompressor(network, vehicle, lowEnd, highStart),
    relief: addRelief(network, vehicle, highStart),
    ports: vehicle.ports.map(({ id, part, cell, height }) => {
      const found = partNamed(parts, part);
      return { id, port: { vessel: found.vessel, cell: found.firstCell + cell, height } };
    }),
  };
}

export function partNamed(parts: readonly CarPart[], name: string): CarPart {
  const found = parts.find(({ part }) => part === name);
  if (!found)
    throw new RangeError(
      `no part "${name}" in the loop; there is ${parts.map(({ part }) => part).join(', ')}`,
    );
  return found;
}

function addRearMetering(
  network: Network,
  { rear }: VehicleData,
  parts: readonly CarPart[],
  from: Port,
): LinkIndex {
  if (!rear) return -1;
  const { vessel, firstCell } = partNamed(parts, rear.parts[0].part);
  const to: Port = { vessel, cell: firstCell, height: 'bulk' };
  return addMetering(network, 'rear-metering', rear.metering, parts, from, to);
}

function addMetering(
  network: Network,
  id: string,
  metering: VehicleData['metering'],
  parts: readonly CarPart[],
  from: Port,
  to: Port,
): LinkIndex {
  const ends = { id, from, to, opening: 1 };
  if (metering.kind === 'orifice-tube') {
    return network.addLink({ kind: 'orificeTube', ...ends, boreM: metering.bore, lengthM: metering.length });
  }
  const bulb = partNamed(parts, metering.bulb);
  return network.addLink({
    kind: 'expansionValve',
    ...ends,
    bulb: { vessel: bulb.vessel, cell: bulb.firstCell, height: 'bulk' },
    bulbFluid: metering.bulbFluid,
    areaM2: metering.area,
    bleedShare: metering.bleed,
    staticSuperheatK: metering.staticSuperheat,
    gradientK: metering.gradient,
    bulbLagS: metering.bulbLag,
    maximumOperatingPa: metering.maximumOperating,
  });
}

function addCompressor(network: Network, vehicle: VehicleData, from: Port, to: Port): LinkIndex {
  const { compressor } = vehicle;
  return network.addLink({
    kind: 'compressor',
    id: 'compressor',
    from,
    to,
    displacementM3: compressor.displacement,
    clearance: compressor.clearance,
    volumetricEfficiency: compressor.volumetricEfficiency,
    isentropicEfficiency: compressor.isentropicEfficiency,
    reedLeakKgPerSPa: compressor.reedLeak / 1e6,
    opening: 1,
  });
}

function addRelief(network: Network, vehicle: VehicleData, from: Port): LinkIndex {
  const { relief } = vehicle.switches;
  return network.addLink({
    kind: 'relief',
    id: 'relief',
    from,
    to: { vessel: ROOM, cell: 0, height: 'bulk' },
    areaM2: 0.7 * relief.area,
    opening: 1,
    opensAbovePa: relief.opens,
    shutsBelowPa: relief.closes,
  });
}

function partsOf(components: readonly ComponentData[], vessel: VesselIndex): CarPart[] {
  let firstCell = 0;
  return components.map(({ part, cells, around, outside }) => {
    const found = { part, vessel, firstCell, cells, around, outsideWPerK: (outside ?? 0) / cells };
    firstCell += cells;
    return found;
  });
}

function cellsOf(component: BranchPart): CellSpec[] {
  const n = component.cells;
  return Array.from({ length: n }, (_, i) => ({
    id: n === 1 ? component.part : `${component.part}-${i + 1}`,
    kind: component.kind,
    volumeM3: component.volume / n,
    wallHeatCapacityJPerK: component.wall / n,
    insideWPerK: [component.twoPhase / n, component.vapour / n, component.liquid / n] as const,
    outsideWPerK: (component.outside ?? 0) / n,
    slipAtRest: component.slipAtRest,
    atRest: component.atRest,
    ...(component.drainsTo === undefined || i < n - 1 ? {} : { drainsTo: component.drainsTo }),
    ...(component.outletHeight === undefined ? {} : { outletHeight: component.outletHeight }),
    ...(component.outletBlend === undefined ? {} : { outletBlend: component.outletBlend }),
    ...(component.liquidBleed === undefined ? {} : { liquidBleed: component.liquidBleed }),
    ...(component.desiccant === undefined ? {} : { desiccantKg: component.desiccant / n }),
  }));
}
