/**
 * One step of the network, in this order: read every cell and every link at the start of the step; let machines and
 * metering devices move what they move; then, from the smallest vessel to the largest, find each pressure and take over.
 */
import { airLeftKg, bookEnd } from './bookFlow';
import { carry } from './carry';
import { commitVessel } from './commitVessel';
import { stepCompressor } from './compressorLinks';
import { isDriven, prepareDriven, settleMoved } from './drivenLinks';
import { TRACE_KG_PER_M3 } from './march';
import { stepExpansionValve, stepOrificeTube } from './meteringLinks';
import { type NetworkCore, totalPressurePa } from './networkCore';
import { TOTAL } from './networkNumbers';
import { stepOil } from './oilSump';
import { prepareCells } from './prepareCells';
import { solveVessel } from './solveVessel';
import { stepWater } from './stepWater';

/** Oil takes minutes and water seconds, so they are looked at every so many steps. */
const OIL_EVERY = 8;
const MOST_OF_WHAT_IS_LEFT = 0.5;
const WATER_SLOT = 2;
const REST_K = 0.005;

export function stepNetwork(core: NetworkCore, dtS: number): void {
  const { plan, numbers } = core;
  numbers.totals[TOTAL.step] += 1;
  for (const v of plan.vesselSlots) if (!isAtRest(core, v)) prepareCells(core, v, dtS);
  for (const l of plan.linkSlots) startLink(core, l, dtS);
  if (numbers.totals[TOTAL.step] % OIL_EVERY === 0) {
    for (const v of plan.vesselSlots) {
      if (plan.sumpOil[v] > 0 && numbers.extra[3][v] > 0) stepOil(core, v, OIL_EVERY * dtS);
      if (numbers.extra[2][v] > 0) stepWater(core, v, OIL_EVERY * dtS);
    }
  }
  for (const v of plan.solveOrder) {
    if (isAtRest(core, v)) continue;
    prepareOwned(core, v, dtS);
    const p = solveVessel(core, v, dtS);
    bookOwned(core, v, dtS);
    commitVessel(core, v, p, dtS);
  }
}

/** A can, a hose or a tank that is joined to nothing and as warm as what is round it: nothing can happen in it. */
function isAtRest({ plan, numbers }: NetworkCore, v: number): boolean {
  if (plan.linksAt[v] > 0 || plan.cellCount[v] > 1 || numbers.extra[WATER_SLOT][v] > 0) return false;
  const c = plan.firstCell[v];
  const wall = numbers.wall[c];
  return (
    numbers.heat[c] === 0 &&
    Math.abs(wall - numbers.surroundings[c]) < REST_K &&
    Math.abs(wall - numbers.temperature[c]) < REST_K
  );
}

function startLink(core: NetworkCore, l: number, dtS: number): void {
  const { numbers, plan } = core;
  const spec = plan.linkSpecs[l];
  if (!spec) return;
  const before = numbers.linkFlow[l];
  numbers.linkFlow[l] = 0;
  numbers.linkLiquid[l] = 0;
  numbers.linkOil[l] = 0;
  if (spec.kind === 'compressor') stepCompressor(core, l, spec, dtS);
  else if (spec.kind === 'orificeTube') stepOrificeTube(core, l, spec, dtS);
  else if (spec.kind === 'expansionValve') stepExpansionValve(core, l, spec, dtS);
  else if (isDriven(spec)) prepareDriven(core, l, spec, before, dtS);
}

/** One-cell vessels follow their links while they solve; for a chain the flows are settled beforehand. */
function prepareOwned(core: NetworkCore, vessel: number, dtS: number): void {
  const owned = core.owned[vessel];
  if (owned.length === 0) return;
  const { plan, scratch, drive, numbers } = core;
  const isChain = plan.cellCount[vessel] > 1;
  for (const l of owned) if (drive.sign[l] > 0) holdBackFar(core, l, vessel);
  if (!isChain) {
    const c = plan.firstCell[vessel];
    core.fixedMass[vessel] = scratch.sourceMass[c];
    core.fixedHeat[vessel] = scratch.sourceHeat[c];
    return;
  }
  const total = totalPressurePa(core, vessel);
  for (const l of owned) {
    if (drive.sign[l] === 0) continue;
    const air = drive.airShare[l];
    const stiff =
      ((1 - air) * (1 + numbers.foreignFactor[vessel])) / numbers.compliance[vessel] +
      air * drive.airGas[l] * numbers.airStiffness[vessel];
    const gain = drive.gain[l] / (1 + drive.gain[l] * dtS * stiff);
    if (drive.sign[l] < 0) holdBack(core, l, ownEnd(core, l, vessel));
    settleMoved(drive, l, gain * dtS * (drive.farPa[l] - total));
    const cell = ownEnd(core, l, vessel);
    scratch.sourceMass[cell] += drive.moved[l];
    scratch.sourceHeat[cell] += drive.moved[l] * drive.enthalpy[l];
  }
}

const ownEnd = ({ links }: NetworkCore, l: number, owner: number): number =>
  links.fromVessel[l] === owner ? links.fromCell[l] : links.toCell[l];

/** The room has plenty. */
function holdBackFar(core: NetworkCore, l: number, owner: number): void {
  const { links } = core;
  const isFrom = links.fromVessel[l] === owner;
  if ((isFrom ? links.toVessel[l] : links.fromVessel[l]) === 0) return;
  holdBack(core, l, isFrom ? links.toCell[l] : links.fromCell[l]);
}

/** Link `l` takes no more from a cell than a share of what other links, settled before it, have left there. */
function holdBack({ numbers, plan, scratch, drive }: NetworkCore, l: number, cell: number): void {
  const going = scratch.sourceMass[cell];
  if (going >= 0) return;
  const left = numbers.mass[cell] - TRACE_KG_PER_M3 * plan.cellVolume[cell] + going;
  const most = left > 0 ? MOST_OF_WHAT_IS_LEFT * left : 0;
  if (drive.most[l] > most) drive.most[l] = most;
}

/** The owner's cell already has its share; the other end and the air are booked here: first what comes in, then what goes. */
function bookOwned(core: NetworkCore, vessel: number, dtS: number): void {
  bookOwnedWays(core, vessel, 1, dtS);
  bookOwnedWays(core, vessel, -1, dtS);
}

function bookOwnedWays(core: NetworkCore, vessel: number, sign: 1 | -1, dtS: number): void {
  const { drive, links, numbers } = core;
  for (const l of core.owned[vessel]) {
    if (drive.sign[l] !== sign) continue;
    const refrigerant = drive.moved[l];
    const ownerIsFrom = links.fromVessel[l] === vessel;
    const far = ownerIsFrom ? links.toVessel[l] : links.fromVessel[l];
    const asked = drive.movedAir[l];
    const left = airLeftKg(core, asked < 0 ? vessel : far);
    const air = asked > left ? left : asked < -left ? -left : asked;
    const cell = ownerIsFrom ? links.toCell[l] : links.fromCell[l];
    bookEnd(core, far, cell, -refrigerant, -refrigerant * drive.enthalpy[l], -air);
    core.airSource[vessel] += air;
    const liquid = Math.abs(refrigerant + air) * drive.liquidShare[l];
    if (refrigerant > 0 || air > 0) carry(core, l, far, vessel, refrigerant, liquid, air);
    else if (refrigerant < 0 || air < 0) carry(core, l, vessel, far, -refrigerant, liquid, -air);
    const along = ownerIsFrom ? -refrigerant : refrigerant;
    numbers.linkFlow[l] = along / dtS;
    numbers.linkLiquid[l] = liquid / dtS;
  }
}
