/**
 * Air over an evaporator coil: cooled, dried, and sometimes frosting it up.
 *
 *   each cell: sensible as on the condenser; water eps m (w_in - w_sat(T_wall)), same eps (Lewis number 1)
 *
 * The blower moves a volume, so its kg/s go with the pressure of the outside air; how dense its temperature makes it is
 * left out (from -10 to 50 degC that would be 20 %). A cell keeps some water and drains the rest; dry air takes kept water
 * back. Under 0 degC water turns to frost with its heat of fusion; frost chokes the air, flow / (1 + (frost / 0.35 kg)^2)
 * [guess], and melts as the wall warms.
 */

import { fastSaturationHumidityRatio } from '../../air/saturationTable';
import { exp } from '../../numerics/exp';
import type { Network } from '../network';
import type { CarPart } from './assembleLoop';
import { AT, type CoilNumbers } from './carNumbers';
import { powerNineSixteenths } from './condenserAir';
import type { VehicleData } from './vehicles';

const AIR_CP = 1006;
const CONDENSING = 2.5e6;
const FUSION = 333400;
const FREEZING_K = 273.15;
const SEA_LEVEL_PA = 101325;
/** Wall to freezing or melting water, W/K a cell, and the frost that halves the air flow, kg. */
const FREEZE_WPERK = 60;
const HALVING_FROST_KG = 0.35;

/** With the blower off, what of step 0 goes through while the car stands; driving brings the rest by this speed, m/s [guess]. */
const STANDING_SHARE = 0.06;
const DRIVEN_AT = 10;
/** Moving air carries half of the case's heat off past the coil at this flow, kg/s [guess]; the ducts' share has it. */
const CASE_HALVES_AT = 0.01;

/** A coil, its air, and where its numbers stand. */
export interface Coil {
  readonly part: CarPart;
  readonly air: VehicleData['evaporatorAir'];
  readonly at: CoilNumbers;
  /** From the engine bay through the wall of its case to the still air in it, W/K; 0 in the cabin. */
  readonly caseWPerK: number;
}

/** `airShare`: of the blower's air, what filter, coil and blower leave; `fins`: of the coil's conductance, what dirt leaves. */
export function stepCoilAir(network: Network, coil: Coil, airShare: number, fins: number, dtS: number): void {
  const { part, air, at } = coil;
  const r = network.reserve;
  const n = part.cells;
  let frost = 0;
  for (let i = 0; i < n; i++) frost += r[at.frost + i];
  const choke = 1 + (frost / HALVING_FROST_KG) * (frost / HALVING_FROST_KG);
  const density = r[AT.ambientPressurePa] / SEA_LEVEL_PA;
  const step = Math.min(air.steps.length - 1, Math.max(0, Math.round(r[at.step])));
  const driven = Math.min(1, r[AT.roadSpeedMPerS] / DRIVEN_AT);
  const still = air.steps[0] * (STANDING_SHARE + (1 - STANDING_SHARE) * driven);
  const blown = step > 0 ? air.steps[step] : still;
  const flow = density * Math.max(0.5 * still, (airShare * blown) / choke);
  const capacity = flow * AIR_CP;
  const conductance = fins * air.conductance * powerNineSixteenths(flow / air.atFlow);
  const reached = 1 - exp(-conductance / capacity);
  const inlet = r[at.inletK] + (step > 0 ? (airShare * air.blowerHeat) / capacity : 0);
  const ratio = r[at.inletRatio];
  const pressure = r[AT.ambientPressurePa];
  const perCell = (capacity * reached) / n;
  const waterFlow = (flow * reached) / n;
  const most = air.holdsWater / n;
  const casePerCell = coil.caseWPerK / (1 + flow / CASE_HALVES_AT) / n;
  let sensible = 0;
  let water = 0;
  let latent = 0;
  for (let i = 0; i < n; i++) {
    const cell = part.firstCell + i;
    const wall = network.wallTemperatureK(part.vessel, cell);
    network.setSurroundings(part.vessel, cell, inlet, perCell);
    sensible += perCell * (inlet - wall);
    let condensed = waterFlow * (ratio - fastSaturationHumidityRatio(wall, pressure));
    const held = r[at.water + i];
    // what dries off cannot freeze as well: together they take no more than there is
    if (condensed < 0) condensed = Math.max(condensed, -held / dtS);
    let melting = FREEZE_WPERK * (wall - FREEZING_K);
    if (melting > 0) melting = Math.min(melting, (r[at.frost + i] * FUSION) / dtS);
    else melting = -Math.min(-melting, (held / dtS + condensed) * FUSION);
    const turned = (melting / FUSION) * dtS;
    r[at.frost + i] = Math.max(0, r[at.frost + i] - turned);
    const now = held + condensed * dtS + turned;
    r[at.water + i] = now < 0 ? 0 : now > most ? most : now;
    if (now > most) r[AT.drainedKg] += now - most;
    const heat = condensed * CONDENSING;
    water += condensed;
    latent += heat;
    network.setHeat(part.vessel, cell, heat - melting + casePerCell * (r[AT.bayK] - wall));
  }
  r[at.flow] = flow;
  r[at.heatW] = sensible + latent;
  r[at.outletK] = inlet - sensible / capacity;
  r[at.outletRatio] = Math.max(0, ratio - water / flow);
}
