/**
 * The pressure of a vessel at the end of a step: where the march leaves nothing over. Quasi-Newton with the slope of the
 * last step, Illinois false position once bracketed. Driven links that a one-cell vessel owns follow the trial pressure.
 */

import { MOST_OF_OWN, settleMoved } from './drivenLinks';
import { march, TRACE_KG_PER_M3 } from './march';
import { LEAST_PRESSURE_PA, type NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { STEAM_TO_AIR } from './portDraw';

const MOST_ROUNDS = 50;
/** What may be left over: a share of the vessel's mass, or what moves the pressure by this many Pa if that is less. */
const CLOSE_SHARE = 3e-6;
const CLOSE_PA = 2;
const CLOSE_KG = 1e-15;

/** Finds the pressure; leaves results in `core.scratch` and returns it. */
export function solveVessel(core: NetworkCore, vessel: number, dtS: number): number {
  const { numbers, mostPressurePa } = core;
  const p0 = numbers.pressure[vessel];
  let give = numbers.compliance[vessel];
  const close = Math.max(CLOSE_KG, Math.min(CLOSE_SHARE * massIn(core, vessel), CLOSE_PA * give));
  let p = within(p0 + dtS * numbers.pressureRate[vessel], mostPressurePa);
  let f = residual(core, vessel, p, dtS);
  let lowP = -1;
  let lowF = 0;
  let highP = -1;
  let highF = 0;
  let side = 0;
  let round = 0;
  while ((f > close || f < -close) && round++ < MOST_ROUNDS) {
    if (f > 0) {
      if (side === 1 && highP >= 0) highF *= 0.5;
      lowP = p;
      lowF = f;
      side = 1;
    } else {
      if (side === -1 && lowP >= 0) lowF *= 0.5;
      highP = p;
      highF = f;
      side = -1;
    }
    const bracketed = lowP >= 0 && highP >= 0;
    let next = p + f / give;
    if (bracketed && !(next > lowP && next < highP && round < 6)) {
      next = (lowP * highF - highP * lowF) / (highF - lowF);
      if (round > 20) next = 0.5 * (lowP + highP);
    }
    next = within(next, mostPressurePa);
    if (next === p || (bracketed && highP - lowP < 1e-9 * highP)) break;
    const before = f;
    const stepPa = next - p;
    p = next;
    f = residual(core, vessel, p, dtS);
    const secant = (before - f) / stepPa;
    if (secant > 0.02 * give && secant < 50 * give) give = secant;
    else if (!bracketed && secant > 0) give = secant > give ? 50 * give : 0.02 * give;
    else if (!bracketed && round > 2) give *= 0.3;
  }
  numbers.compliance[vessel] = give;
  numbers.pressureRate[vessel] = (p + f / give - p0) / dtS;
  note(core, vessel, f, round);
  return p;
}

/** kg left over at trial pressure `p`, owned links included. */
function residual(core: NetworkCore, vessel: number, p: number, dtS: number): number {
  if (core.owned[vessel].length > 0 && core.plan.cellCount[vessel] === 1) followLinks(core, vessel, p, dtS);
  return march(core.numbers, core.plan, core.scratch, vessel, p);
}

/**
 * Flows of the owned links at trial pressure `p`. Air that comes or goes changes the total pressure at once:
 * p_air = a (m + sum share gain dt (far - p)) / (1 + a sum share gain dt). A link that would turn round stands still.
 */
function followLinks(core: NetworkCore, vessel: number, p: number, dtS: number): void {
  const { drive } = core;
  const owned = core.owned[vessel];
  for (const l of owned) {
    drive.moved[l] = drive.sign[l];
    drive.movedAir[l] = 0;
  }
  let total = p;
  for (let pass = 0; pass < 2; pass++) {
    total = totalAt(core, vessel, p, dtS);
    let turned = false;
    for (const l of owned) {
      if (drive.moved[l] === 0 || (drive.farPa[l] - total) * drive.sign[l] > 0) continue;
      drive.moved[l] = 0;
      turned = true;
    }
    if (!turned) break;
  }
  moveOwned(core, vessel, total, dtS);
}

/** Total pressure at refrigerant pressure `p`, with the air that the links not yet standing still bring. */
function totalAt(core: NetworkCore, vessel: number, p: number, dtS: number): number {
  const { drive, numbers } = core;
  const a = numbers.airStiffness[vessel];
  const own = p * (1 + numbers.foreignFactor[vessel]);
  let air =
    numbers.extra[0][vessel] +
    core.airSource[vessel] +
    STEAM_TO_AIR * (numbers.steam[vessel] + core.steamSource[vessel]);
  let pull = 0;
  for (const l of core.owned[vessel]) {
    if (drive.moved[l] === 0) continue;
    const g = drive.airShare[l] * drive.airGas[l] * drive.gain[l] * dtS;
    air += g * (drive.farPa[l] - own);
    pull += g;
  }
  return own + Math.max(0, (a * air) / (1 + a * pull));
}

/** Settles what moves at total pressure `total`, together at most what the cell has and gets, and brings it to the cell. */
function moveOwned(core: NetworkCore, vessel: number, total: number, dtS: number): void {
  const { drive, numbers, scratch, plan } = core;
  const owned = core.owned[vessel];
  const c = plan.firstCell[vessel];
  let given = 0;
  let taken = 0;
  for (const l of owned) {
    if (drive.moved[l] === 0) continue;
    const m = drive.gain[l] * dtS * (drive.farPa[l] - total);
    settleMoved(drive, l, m * drive.sign[l] < 0 ? 0 : m);
    if (drive.moved[l] < 0) given -= drive.moved[l];
    else taken += drive.moved[l];
  }
  const left = numbers.mass[c] - TRACE_KG_PER_M3 * plan.cellVolume[c] + Math.min(0, core.fixedMass[vessel]);
  const most = MOST_OF_OWN * (left + taken);
  const scale = given > most ? Math.max(0, most) / given : 1;
  let mass = core.fixedMass[vessel];
  let heat = core.fixedHeat[vessel];
  for (const l of owned) {
    if (drive.moved[l] < 0) drive.moved[l] *= scale;
    mass += drive.moved[l];
    heat += drive.moved[l] * drive.enthalpy[l];
  }
  scratch.sourceMass[c] = mass;
  scratch.sourceHeat[c] = heat;
}

function massIn(core: NetworkCore, vessel: number): number {
  const { plan, numbers } = core;
  const first = plan.firstCell[vessel];
  let sum = 0;
  for (let c = first; c < first + plan.cellCount[vessel]; c++) sum += numbers.mass[c];
  return sum;
}

function within(p: number, most: number): number {
  return p < LEAST_PRESSURE_PA ? LEAST_PRESSURE_PA : p > most ? most : p;
}

function note(core: NetworkCore, vessel: number, f: number, round: number): void {
  const { totals } = core.numbers;
  if (round > MOST_ROUNDS) totals[TOTAL.unsolvedSteps] += 1;
  const share = Math.abs(f) / massIn(core, vessel);
  if (share > totals[TOTAL.worstResidual]) totals[TOTAL.worstResidual] = share;
}
