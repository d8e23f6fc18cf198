/** Takes over what links brought of everything but refrigerant, and reads the pressures that it adds. */
import { FOREIGN_IDS } from './foreign';
import { foreignFactor } from './foreignFactor';
import { FOREIGN, OIL, SEALANT, WATER } from './moveSpecies';
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { AIR_GAS_CONSTANT, STEAM_TO_AIR } from './portDraw';

/** Least share of a vessel that counts as room for air: it would dissolve rather than be crushed. */
const LEAST_GAS_SHARE = 0.02;

/** Links together take no more than there is (`airLeftKg`, `move`); floors are for rounding, and the books show them. */
export function takeSpecies(core: NetworkCore, vessel: number): void {
  const { numbers: n, airSource, steamSource, speciesSource } = core;
  const air = n.extra[0];
  const came = air[vessel] + airSource[vessel];
  air[vessel] = came > 0 ? came : 0;
  airSource[vessel] = 0;
  for (let s = FOREIGN; s <= SEALANT; s++) {
    const source = speciesSource[s];
    if (source[vessel] === 0) continue;
    const there = n.extra[s - 1][vessel] + source[vessel];
    n.extra[s - 1][vessel] = there > 0 ? there : 0;
    source[vessel] = 0;
  }
  const water = n.extra[WATER - 1][vessel];
  if (water > 0 || n.steam[vessel] > 0) {
    const free = water - n.adsorbed[vessel];
    const steam = n.steam[vessel] + steamSource[vessel];
    n.steam[vessel] = steam > free ? free : steam > 0 ? steam : 0;
  }
  steamSource[vessel] = 0;
  core.massSource[vessel] = 0;
  const oil = n.extra[OIL - 1][vessel];
  if (n.sump[vessel] > oil) n.sump[vessel] = oil;
  readGas(core, vessel);
}

/**
 * Liquid and all of a vessel's refrigerant, and the pressures beside its own. Air and water vapour have one partial
 * pressure in all of the vessel's gas: p = (m_air + 1.61 m_vapour) R / (sum of gas volume over temperature).
 */
export function readGas(core: NetworkCore, vessel: number): void {
  const { numbers: n, plan } = core;
  const iso = plan.isobars[vessel];
  const hl = iso.liquidEnthalpyJPerKg;
  const hv = iso.vapourEnthalpyJPerKg;
  const vl = iso.liquidVolumeM3PerKg;
  const first = plan.firstCell[vessel];
  const end = first + plan.cellCount[vessel];
  let room = 0;
  let held = 0;
  let liquid = 0;
  for (let c = first; c < end; c++) {
    const h = n.enthalpy[c];
    const mass = n.mass[c];
    const volume = plan.cellVolume[c];
    let gas = volume;
    held += mass;
    if (h <= hl) {
      gas = 0;
      liquid += mass;
    } else if (h < hv) {
      const wet = (mass * (hv - h)) / (hv - hl);
      gas = volume - wet * vl;
      liquid += wet;
    }
    const least = LEAST_GAS_SHARE * volume;
    room += (gas > least ? gas : least) / n.temperature[c];
  }
  n.held[vessel] = held + n.dissolved[vessel];
  n.liquid[vessel] = liquid;
  n.airStiffness[vessel] = AIR_GAS_CONSTANT / room;
  n.airPressure[vessel] = (n.extra[0][vessel] + STEAM_TO_AIR * n.steam[vessel]) * n.airStiffness[vessel];
  const foreign = n.extra[FOREIGN - 1][vessel];
  if (foreign > 0) readForeign(core, vessel, foreign);
  else n.foreignFactor[vessel] = 0;
}

function readForeign(core: NetworkCore, vessel: number, foreignKg: number): void {
  const { numbers: n, plan, refrigerant } = core;
  const held = n.held[vessel];
  const iso = plan.isobars[vessel];
  const fluid = FOREIGN_IDS[n.totals[TOTAL.foreignFluid] - 1];
  n.foreignFactor[vessel] = foreignFactor(
    fluid,
    foreignKg < held ? foreignKg / held : 1,
    n.liquid[vessel] / held,
    refrigerant.molarMassKgPerMol,
    iso.pressurePa,
    iso.saturationTemperatureK,
  );
}
