/** Takes over what the march found: cells, then walls (implicit in their surroundings), then everything else it holds. */
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { takeSpecies } from './takeSpecies';

const SLOPE_EVERY = 16;

export function commitVessel(core: NetworkCore, vessel: number, p: number, dtS: number): void {
  const { numbers: n, plan, scratch } = core;
  const iso = plan.isobars[vessel];
  if (iso.pressurePa !== p) iso.setPressurePa(p);
  n.pressure[vessel] = p;
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  const perS = 1 / dtS;
  const { mass, enthalpy, flow } = n;
  const { newMass, newHeat, sent } = scratch;
  for (let c = first; c < end; c++) {
    const now = newMass[c];
    mass[c] = now;
    enthalpy[c] = newHeat[c] / now;
    flow[c] = sent[c] * perS;
  }
  takeStates(core, vessel);
  warmWalls(core, vessel, dtS);
  takeSpecies(core, vessel);
}

/** Temperature, its slope and specific volume of every cell, from mass, enthalpy and the vessel's pressure. */
export function readCells(core: NetworkCore, vessel: number): void {
  const { numbers: n, plan } = core;
  const iso = plan.isobars[vessel];
  const hl = iso.liquidEnthalpyJPerKg;
  const hv = iso.vapourEnthalpyJPerKg;
  const vl = iso.liquidVolumeM3PerKg;
  const rise = (iso.vapourVolumeM3PerKg - vl) / (hv - hl);
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  for (let c = first; c < end; c++) {
    const h = n.enthalpy[c];
    if (h > hl && h < hv) {
      n.temperature[c] = iso.saturationTemperatureK;
      n.temperatureSlope[c] = 0;
      n.volume[c] = vl + (h - hl) * rise;
    } else {
      n.temperature[c] = iso.temperatureK(h);
      n.temperatureSlope[c] = iso.temperatureSlope(h);
      n.volume[c] = iso.volumeM3PerKg(h);
    }
  }
}

/**
 * As `readCells`, after a march: a single-phase cell keeps its enthalpy through the outflow, so its volume is known; the
 * slope of temperature changes slowly and is looked up again every 16 steps and on a change of phase.
 */
function takeStates(core: NetworkCore, vessel: number): void {
  const { numbers: n, plan, scratch } = core;
  const iso = plan.isobars[vessel];
  const hl = iso.liquidEnthalpyJPerKg;
  const hv = iso.vapourEnthalpyJPerKg;
  const vl = iso.liquidVolumeM3PerKg;
  const rise = (iso.vapourVolumeM3PerKg - vl) / (hv - hl);
  const anew = n.totals[TOTAL.step] % SLOPE_EVERY === 0;
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  const { enthalpy, temperatureSlope, volume } = n;
  iso.temperaturesOf(enthalpy, first, end, n.temperature);
  for (let c = first; c < end; c++) {
    const h = enthalpy[c];
    if (h > hl && h < hv) {
      temperatureSlope[c] = 0;
      volume[c] = vl + (h - hl) * rise;
      continue;
    }
    volume[c] = scratch.volume[c] > 0 ? scratch.volume[c] : iso.volumeM3PerKg(h);
    if (anew || temperatureSlope[c] === 0) temperatureSlope[c] = iso.temperatureSlope(h);
  }
}

function warmWalls(core: NetworkCore, vessel: number, dtS: number): void {
  const { numbers: n, plan, scratch, bodyHeat } = core;
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  const { outside, heat, wall, wallLeft, surroundings } = n;
  const { wallHeat: capacities } = plan;
  const { wallHeat: taken } = scratch;
  let gained = 0;
  let rejected = 0;
  let turned = 0;
  for (let c = first; c < end; c++) {
    const g = outside[c] * dtS;
    const given = heat[c] * dtS;
    const around = surroundings[c];
    const capacity = capacities[c];
    const before = wall[c];
    const rise = (g * (around - before) + given + bodyHeat[c] - taken[c]) / (capacity + g) + wallLeft[c];
    const after = before + rise;
    wall[c] = after;
    wallLeft[c] = rise - (after - before);
    bodyHeat[c] = 0;
    const through = g * (around - after);
    gained += through + given;
    turned += Math.abs(through) + Math.abs(given);
    if (through < 0) rejected -= through;
  }
  n.totals[TOTAL.heatInJ] += gained;
  n.totals[TOTAL.rejectedJ] += rejected;
  n.totals[TOTAL.turnedJ] += turned;
}
