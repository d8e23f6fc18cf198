/** Puts the parts of the integrator behind the face of `Network`. */
import { hashFloats } from '../numerics/hash';
import { refrigerant as fluidOf } from '../refrigerant/fluids';
import type { Refrigerant } from '../refrigerant/refrigerant';
import { massIn, readBooks, storedIn } from './books';
import { bringIn } from './bringIn';
import { isDriven, ownerOf } from './drivenLinks';
import { fillVessel } from './fillVessel';
import { FOREIGN_IDS } from './foreign';
import { liquidShare } from './liquidShare';
import { fitMeter, METER } from './meterNumbers';
import { FOREIGN } from './moveSpecies';
import type { Network } from './network';
import { bulbFilledWith, createCore, type NetworkCore, totalPressurePa } from './networkCore';
import { CAPACITY, METER_NUMBERS, TOTAL } from './networkNumbers';
import { cellOfPort, enterVessel, findRoomFor, leaveVessel, refreshSlots } from './networkPlan';
import { type LinkSpec, type NetworkStructure, type PortHeight, SPECIES } from './networkTypes';
import { createDraw, drawAt } from './portDraw';
import { stepNetwork } from './stepNetwork';
import { waterMgPerKg } from './waterInRefrigerant';

const SEA_LEVEL_PA = 101325;
const ROOM_K = 298.15;

/**
 * One literal and not several spread together: so all networks have one shape, and what steps one stays compiled for the
 * next.
 */
export function createNetwork(refrigerant: Refrigerant): Network {
  const core = createCore(refrigerant);
  const { plan, numbers } = core;
  numbers.totals[TOTAL.roomPressurePa] = SEA_LEVEL_PA;
  numbers.totals[TOTAL.roomTemperatureK] = ROOM_K;
  const at = (vessel: number, cell: number): number => plan.firstCell[vessel] + cell;
  const draw = createDraw();
  return {
    refrigerantId: refrigerant.id,
    step: (dtS) => stepNetwork(core, dtS),

    structure: () => ({
      vessels: plan.vesselSlots.map((slot) => ({
        slot,
        firstCell: plan.firstCell[slot],
        spec: present(plan.vesselSpecs[slot]),
      })),
      links: plan.linkSlots.map((slot) => ({ slot, spec: present(plan.linkSpecs[slot]) })),
    }),
    rebuild: (structure) => rebuild(core, structure),
    restore(structure, state) {
      rebuild(core, structure);
      numbers.state.set(state);
      for (const v of plan.vesselSlots) plan.isobars[v].setPressurePa(numbers.pressure[v]);
    },
    addVessel(spec, contents) {
      const { slot, firstCell } = findRoomFor(plan, spec.cells.length);
      enterVessel(plan, slot, firstCell, spec);
      spec.cells.forEach((cell, i) => {
        numbers.outside[firstCell + i] = cell.outsideWPerK;
      });
      fillVessel(core, slot, contents);
      refreshOwners(core);
      return slot;
    },
    removeVessel(vessel) {
      for (const l of [...plan.linkSlots]) {
        const spec = present(plan.linkSpecs[l]);
        if (spec.from.vessel === vessel || spec.to.vessel === vessel) plan.linkSpecs[l] = undefined;
      }
      SPECIES.forEach((_, s) => {
        const kg = massIn(core, vessel, s);
        numbers.totals[TOTAL.broughtInKg + s] -= kg;
        numbers.totals[TOTAL.crossedKg + s] += kg;
      });
      numbers.totals[TOTAL.broughtInJ] -= storedIn(core, vessel);
      leaveVessel(plan, vessel);
      refreshOwners(core);
    },
    bringIn: (vessel, species, kg, oilAt) => bringIn(core, vessel, species, kg, oilAt),
    addLink(spec) {
      let slot = 0;
      while (slot < CAPACITY.links && plan.linkSpecs[slot]) slot++;
      if (slot >= CAPACITY.links) throw new RangeError(`a network holds at most ${CAPACITY.links} links`);
      enterLink(core, slot, spec);
      numbers.opening[slot] = spec.opening;
      numbers.speed[slot] = 0;
      numbers.stroke[slot] = 1;
      numbers.reedLeak[slot] = numbers.shaftHeat[slot] = 0;
      numbers.linkFlow[slot] = numbers.linkLiquid[slot] = numbers.linkWork[slot] = numbers.linkOil[slot] = 0;
      numbers.memory.fill(0, 3 * slot, 3 * slot + 3);
      fitMeter(numbers, slot);
      refreshOwners(core);
      return slot;
    },
    removeLink(link) {
      plan.linkSpecs[link] = undefined;
      refreshOwners(core);
    },
    vesselNamed: (id) => plan.vesselSpecs.findIndex((spec) => spec?.id === id),
    linkNamed: (id) => plan.linkByName.get(id) ?? -1,
    cellNamed: (vessel, id) => plan.vesselSpecs[vessel]?.cells.findIndex((cell) => cell.id === id) ?? -1,

    setRoom(pressurePa, temperatureK, humidityRatio = 0) {
      numbers.totals[TOTAL.roomHumidityRatio] = humidityRatio;
      numbers.totals[TOTAL.roomPressurePa] = pressurePa;
      numbers.totals[TOTAL.roomTemperatureK] = temperatureK;
    },
    setForeign(fluid) {
      numbers.totals[TOTAL.foreignFluid] = 1 + FOREIGN_IDS.indexOf(fluid);
    },
    renewDesiccant(vessel, capacityKg, heldKg) {
      const gone = numbers.adsorbed[vessel];
      numbers.adsorbed[vessel] = 0;
      bringIn(core, vessel, 'water', -gone);
      numbers.desiccant[vessel] = capacityKg;
      numbers.adsorbed[vessel] = bringIn(core, vessel, 'water', Math.min(capacityKg, heldKg));
    },
    setOpening(link, opening) {
      numbers.opening[link] = opening;
    },
    setMeter(link, name, value) {
      numbers.meter[METER_NUMBERS * link + METER[name]] = value;
    },
    setSpeed(link, revPerS) {
      numbers.speed[link] = revPerS;
    },
    setStroke(link, share) {
      numbers.stroke[link] = share;
    },
    setReedLeak(link, kgPerSPa) {
      numbers.reedLeak[link] = kgPerSPa;
    },
    setShaftHeat(link, heatW) {
      numbers.shaftHeat[link] = heatW;
    },
    setSurroundings(vessel, cell, temperatureK, conductanceWPerK) {
      const c = plan.firstCell[vessel] + cell;
      numbers.surroundings[c] = temperatureK;
      numbers.outside[c] = conductanceWPerK;
    },
    setHeat(vessel, cell, heatW) {
      numbers.heat[plan.firstCell[vessel] + cell] = heatW;
    },
    setWall(vessel, cell, temperatureK) {
      const c = plan.firstCell[vessel] + cell;
      const heat = plan.wallHeat[c] * (temperatureK - numbers.wall[c]);
      numbers.totals[TOTAL.heatInJ] += heat;
      numbers.totals[TOTAL.turnedJ] += Math.abs(heat);
      numbers.wall[c] = temperatureK;
    },
    setTilt(vessel, degrees) {
      numbers.tilt[vessel] = degrees;
    },
    setShaking(vessel, share) {
      numbers.shaking[vessel] = share;
    },

    state: numbers.state,
    reserve: numbers.reserve,
    stateHash: () => hashFloats(numbers.state),
    vesselSlots: () => plan.vesselSlots,
    linkSlots: () => plan.linkSlots,
    cellCount: (vessel) => plan.cellCount[vessel],
    pressurePa: (vessel) => totalPressurePa(core, vessel),
    refrigerantPressurePa: (vessel) => numbers.pressure[vessel],
    airPressurePa: (vessel) => numbers.airPressure[vessel],
    massKg: (vessel, species) => massIn(core, vessel, SPECIES.indexOf(species)),
    chargeKg: (vessel) => massIn(core, vessel, 0) + massIn(core, vessel, FOREIGN),
    contentKg: (vessel) =>
      SPECIES.reduce((sum, species, s) => (species === 'air' ? sum : sum + massIn(core, vessel, s)), 0),
    foreign: () => FOREIGN_IDS[numbers.totals[TOTAL.foreignFluid] - 1] ?? null,
    sumpOilKg: (vessel) => numbers.sump[vessel],
    waterMgPerKg: (vessel) => waterMgPerKg(core, vessel),
    adsorbedKg: (vessel) => numbers.adsorbed[vessel],
    desiccantKg: (vessel) => numbers.desiccant[vessel],
    cellMassKg: (vessel, cell) => numbers.mass[at(vessel, cell)],
    temperatureK: (vessel, cell) => numbers.temperature[at(vessel, cell)],
    enthalpyJPerKg: (vessel, cell) => numbers.enthalpy[at(vessel, cell)],
    quality: (vessel, cell) => plan.isobars[vessel].quality(numbers.enthalpy[at(vessel, cell)]),
    saturationTemperatureK: (vessel) => plan.isobars[vessel].saturationTemperatureK,
    wallTemperatureK: (vessel, cell) => numbers.wall[at(vessel, cell)],
    liquidShare: (vessel, cell) => liquidShare(core, vessel, at(vessel, cell)),
    massFlowKgPerS: (link) => numbers.linkFlow[link],
    liquidFlowKgPerS: (link) => numbers.linkLiquid[link],
    workW: (link) => numbers.linkWork[link],
    oilVentedKg: (link) => numbers.linkOil[link],
    linkMemory: (link, index) => numbers.memory[3 * link + index],
    meter: (link, name) => numbers.meter[METER_NUMBERS * link + METER[name]],
    portEnthalpyJPerKg(port) {
      drawAt(numbers, plan, port.vessel, cellOfPort(plan, port), heightOf(port.height), draw);
      return draw.enthalpyJPerKg;
    },
    ventedKg: (species) => numbers.totals[TOTAL.ventedKg + SPECIES.indexOf(species)],
    books: () => readBooks(core),
  };
}

function rebuild(core: NetworkCore, structure: NetworkStructure): void {
  const { plan } = core;
  plan.vesselSpecs.fill(undefined);
  plan.linkSpecs.fill(undefined);
  plan.cellCount.fill(0);
  for (const { slot, firstCell, spec } of structure.vessels) enterVessel(plan, slot, firstCell, spec);
  for (const { slot, spec } of structure.links) enterLink(core, slot, spec);
  refreshOwners(core);
}

function enterLink(core: NetworkCore, slot: number, spec: LinkSpec): void {
  const { links, plan } = core;
  links.fromCell[slot] = cellOfPort(plan, spec.from);
  links.toCell[slot] = cellOfPort(plan, spec.to);
  links.bulbCell[slot] = spec.kind === 'expansionValve' ? cellOfPort(plan, spec.bulb) : -1;
  links.fromVessel[slot] = spec.from.vessel;
  links.toVessel[slot] = spec.to.vessel;
  links.fromHeight[slot] = heightOf(spec.from.height);
  links.toHeight[slot] = heightOf(spec.to.height);
  plan.linkSpecs[slot] = spec;
  if (spec.kind === 'expansionValve') core.bulbs[slot] = bulbFilledWith(fluidOf(spec.bulbFluid));
}

function refreshOwners(core: NetworkCore): void {
  const { plan, links, drive } = core;
  refreshSlots(plan);
  core.owned = core.owned.map(() => []);
  drive.owner.fill(0);
  for (const l of plan.linkSlots) {
    if (!isDriven(present(plan.linkSpecs[l]))) continue;
    const owner = ownerOf(core, links.fromVessel[l], links.toVessel[l]);
    drive.owner[l] = owner;
    core.owned[owner].push(l);
  }
}

function heightOf(height: PortHeight): number {
  if (height === 'bulk') return -1;
  if (height === 'top') return 1;
  return height === 'bottom' ? 0 : height;
}

function present<T>(value: T | undefined): T {
  if (value === undefined) throw new RangeError('no such slot in this network');
  return value;
}
