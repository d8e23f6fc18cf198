/**
 * Air over the evaporator coil: cooled, dried, and sometimes frosting it up.
 *
 *   each cell: sensible as on the condenser; water eps m (w_in - w_sat(T_wall)), same eps (Lewis number 1)
 *
 * A cell keeps some water and drains the rest; dry air takes kept water back. Under 0 °C water turns to frost with its
 * heat of fusion; frost chokes the air, flow / (1 + (frost / 0.35 kg)^2) [guess], and melts as the wall warms.
 */

import { fastSaturationHumidityRatio } from '../../air/saturationTable';
import { exp } from '../../numerics/exp';
import type { Network } from '../network';
import type { CarPart } from './assembleLoop';
import { AT, FROST, WATER } from './carNumbers';
import { powerNineSixteenths } from './condenserAir';
import type { VehicleData } from './vehicles';

const AIR_CP = 1006;
const CONDENSING = 2.5e6;
const FUSION = 333400;
const FREEZING_K = 273.15;
/** Wall to freezing or melting water, W/K a cell, and the frost that halves the air flow, kg. */
const FREEZE_WPERK = 60;
const HALVING_FROST_KG = 0.35;
/** Ducts warm the air towards the interior by this share before it leaves the vents [guess]. */
const DUCT_SHARE = 0.1;

export function stepCoilAir(
  network: Network,
  data: VehicleData['evaporatorAir'],
  part: CarPart,
  dtS: number,
): void {
  const r = network.reserve;
  const n = part.cells;
  let frost = 0;
  for (let i = 0; i < n; i++) frost += r[FROST + i];
  const choke = 1 + (frost / HALVING_FROST_KG) * (frost / HALVING_FROST_KG);
  const step = Math.min(data.steps.length - 1, Math.max(0, Math.round(r[AT.blowerStep])));
  const flow = Math.max(0.5 * data.steps[0], data.steps[step] / choke);
  const capacity = flow * AIR_CP;
  const conductance = data.conductance * powerNineSixteenths(flow / data.atFlow);
  const reached = 1 - exp(-conductance / capacity);
  const inlet = r[AT.coilInletK] + (step > 0 ? data.blowerHeat / capacity : 0);
  const ratio = r[AT.coilInletRatio];
  const pressure = r[AT.ambientPressurePa];
  const perCell = (capacity * reached) / n;
  const waterFlow = (flow * reached) / n;
  const most = data.holdsWater / n;
  let sensible = 0;
  let water = 0;
  let latent = 0;
  for (let i = 0; i < n; i++) {
    const cell = part.firstCell + i;
    const wall = network.wallTemperatureK(part.vessel, cell);
    network.setSurroundings(part.vessel, cell, inlet, perCell);
    sensible += perCell * (inlet - wall);
    let condensed = waterFlow * (ratio - fastSaturationHumidityRatio(wall, pressure));
    const held = r[WATER + i];
    // what dries off cannot freeze as well: together they take no more than there is
    if (condensed < 0) condensed = Math.max(condensed, -held / dtS);
    let melting = FREEZE_WPERK * (wall - FREEZING_K);
    if (melting > 0) melting = Math.min(melting, (r[FROST + i] * FUSION) / dtS);
    else melting = -Math.min(-melting, (held / dtS + condensed) * FUSION);
    const turned = (melting / FUSION) * dtS;
    r[FROST + i] = Math.max(0, r[FROST + i] - turned);
    const now = held + condensed * dtS + turned;
    r[WATER + i] = now < 0 ? 0 : now > most ? most : now;
    if (now > most) r[AT.drainedKg] += now - most;
    const heat = condensed * CONDENSING;
    water += condensed;
    latent += heat;
    network.setHeat(part.vessel, cell, heat - melting);
  }
  r[AT.coilFlow] = flow;
  r[AT.coilHeatW] = sensible + latent;
  const leaving = inlet - sensible / capacity;
  r[AT.coilOutletK] = leaving + DUCT_SHARE * (r[AT.interiorK] - leaving);
  r[AT.coilOutletRatio] = Math.max(0, ratio - water / flow);
}
