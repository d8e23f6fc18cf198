/**
 * Fills a vessel at rest and in equilibrium at one temperature: saturated if there is enough for it, else superheated.
 * Liquid goes where it would stand: see `CellSpec.atRest`.
 */

import { massIn, storedIn } from './books';
import { readCells } from './commitVessel';
import { FOREIGN, OIL, SEALANT, WATER } from './moveSpecies';
import { LEAST_PRESSURE_PA, type NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { volumeOf } from './networkPlan';
import { type Contents, SPECIES } from './networkTypes';
import { settledShare } from './oilSump';
import { saturationPressureAt } from './saturationAt';
import { freeWaterKg, settledSteamKg } from './stepWater';
import { readGas } from './takeSpecies';

const MOST_POT_LEVEL = 0.9;

/** `contents.refrigerantKg` includes what the oil holds. Enters everything in the books as brought in. */
export function fillVessel(core: NetworkCore, vessel: number, contents: Contents): void {
  const { numbers: n, plan, mostPressurePa } = core;
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  const iso = plan.isobars[vessel];
  const t = contents.temperatureK;
  const psat = saturationPressureAt(core.probe, 5e5, t, mostPressurePa);
  putIn(core, vessel, contents);
  const kgInAll = contents.refrigerantKg + (contents.foreignKg ?? 0);
  const oil = plan.sumpOil[vessel] > 0 ? (contents.oilKg ?? 0) : 0;
  const p = restPressure(core, vessel, kgInAll, oil, t, psat);
  iso.setPressurePa(p);
  const held = oil * settledShare(p, psat);
  n.dissolved[vessel] = held;
  n.dissolvedHeat[vessel] = held * iso.vapourEnthalpyJPerKg;
  for (let c = first; c < end; c++) {
    n.wall[c] = t;
    n.surroundings[c] = t;
    n.heat[c] = 0;
    n.flow[c] = 0;
    n.wallLeft[c] = 0;
  }
  n.pressure[vessel] = p;
  n.pressureRate[vessel] = 0;
  n.tilt[vessel] = 0;
  n.shaking[vessel] = 0;
  spread(core, vessel, Math.max(1e-12, kgInAll - held), p, psat, t);
  let kg = 0;
  for (let c = first; c < end; c++) kg += n.mass[c];
  n.compliance[vessel] = (0.3 * kg) / p + 1e-13;
  readCells(core, vessel);
  readGas(core, vessel);
  n.steam[vessel] = Math.min(freeWaterKg(core, vessel), settledSteamKg(core, vessel));
  if (n.steam[vessel] > 0) readGas(core, vessel);
  bringIn(core, vessel);
}

/** What has stood there long: a desiccant has taken up what water it can. */
function putIn(core: NetworkCore, vessel: number, contents: Contents): void {
  const { numbers: n, plan } = core;
  const { waterKg = 0, oilKg = 0 } = contents;
  n.extra[0][vessel] = contents.airKg ?? 0;
  n.extra[FOREIGN - 1][vessel] = contents.foreignKg ?? 0;
  n.extra[WATER - 1][vessel] = waterKg;
  n.extra[OIL - 1][vessel] = oilKg;
  n.extra[SEALANT - 1][vessel] = contents.sealantKg ?? 0;
  const cells = plan.vesselSpecs[vessel]?.cells ?? [];
  n.desiccant[vessel] = cells.reduce((sum, cell) => sum + (cell.desiccantKg ?? 0), 0);
  n.adsorbed[vessel] = Math.min(waterKg, n.desiccant[vessel]);
  n.steam[vessel] = 0;
  n.sump[vessel] = plan.sumpOil[vessel] > 0 ? Math.min(oilKg, contents.sumpKg ?? oilKg) : 0;
}

function bringIn(core: NetworkCore, vessel: number): void {
  const { numbers: n } = core;
  SPECIES.forEach((_, s) => {
    const kg = massIn(core, vessel, s);
    n.totals[TOTAL.broughtInKg + s] += kg;
    n.totals[TOTAL.crossedKg + s] += kg;
  });
  n.totals[TOTAL.broughtInJ] += storedIn(core, vessel);
}

/** Saturation pressure if liquid is left over, else that of the vapour alone; oil holds its share either way. */
function restPressure(
  core: NetworkCore,
  vessel: number,
  kgInAll: number,
  oil: number,
  temperatureK: number,
  psat: number,
): number {
  const { plan, probe } = core;
  const volume = volumeOf(plan, vessel);
  probe.setPressurePa(psat);
  if (kgInAll - oil * settledShare(psat, psat) >= volume / probe.vapourVolumeM3PerKg) return psat;
  let low = LEAST_PRESSURE_PA;
  let high = psat;
  for (let i = 0; i < 60; i++) {
    const p = 0.5 * (low + high);
    probe.setPressurePa(p);
    const h = probe.enthalpyFromTemperatureJPerKg(temperatureK);
    const kg = volume / probe.volumeM3PerKg(h) + oil * settledShare(p, psat);
    if (kg > kgInAll) high = p;
    else low = p;
  }
  return 0.5 * (low + high);
}

function spread(core: NetworkCore, vessel: number, kg: number, p: number, psat: number, t: number): void {
  const { numbers: n, plan } = core;
  const iso = plan.isobars[vessel];
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  const volume = volumeOf(plan, vessel);
  if (p < psat) {
    const h = iso.enthalpyFromTemperatureJPerKg(t);
    for (let c = first; c < end; c++) {
      n.mass[c] = (kg * plan.cellVolume[c]) / volume;
      n.enthalpy[c] = h;
    }
    return;
  }
  const vl = iso.liquidVolumeM3PerKg;
  const vv = iso.vapourVolumeM3PerKg;
  // liquid volume that makes up the mass with vapour in the rest
  let liquid = (kg - volume / vv) / (1 / vl - 1 / vv);
  if (liquid > volume) liquid = volume;
  const standing = standingLiquid(core, vessel, liquid);
  for (let c = first; c < end; c++) {
    const wet = standing[c - first];
    const liquidKg = wet / vl;
    const vapourKg = (plan.cellVolume[c] - wet) / vv;
    n.mass[c] = liquidKg + vapourKg;
    n.enthalpy[c] =
      (liquidKg * iso.liquidEnthalpyJPerKg + vapourKg * iso.vapourEnthalpyJPerKg) / (liquidKg + vapourKg);
  }
}

/** m3 of liquid in each cell: reservoirs first, then wet cells alike, dry ones only when all else is full. */
function standingLiquid(core: NetworkCore, vessel: number, liquidM3: number): Float64Array {
  const { plan } = core;
  const first = plan.firstCell[vessel];
  const cells = plan.vesselSpecs[vessel]?.cells ?? [];
  const out = new Float64Array(cells.length);
  let left = liquidM3;
  const steps: readonly (readonly [string, number])[] = [
    ['reservoir', MOST_POT_LEVEL],
    ['wet', 1],
    ['reservoir', 1],
    ['dry', 1],
  ];
  for (const [rest, level] of steps) {
    const takes = cells.map((cell, i) =>
      (cell.atRest ?? 'wet') === rest ? Math.max(0, level * plan.cellVolume[first + i] - out[i]) : 0,
    );
    const room = takes.reduce((sum, v) => sum + v, 0);
    const share = room > 0 ? Math.min(1, left / room) : 0;
    takes.forEach((take, i) => {
      out[i] += share * take;
    });
    left -= share * room;
  }
  return out;
}
