/**
 * Air over the condenser: fans and driving wind in, some of the warm air round the edges back in again.
 *
 *   each cell: Q = eps m cp (T_wall - T_in) / n,  eps = 1 - exp(-UA / (m cp)),  UA ~ m^0.56 (9/16)
 *   T_in = T_ambient + r / (1 + v / 4) (T_out - T_ambient)
 *
 * Fans and wind move volumes, so their kg/s go with the pressure of the outside air; how dense its temperature makes it
 * is left out (from -10 to 50 degC that would be 20 %). Standing with no fan, only a little air rises through it, warmed
 * by the engine. Water sprayed on takes its heat of evaporation from the air that comes in.
 */
import { exp } from '../../numerics/exp';
import type { Network } from '../network';
import type { CarPart } from './assembleLoop';
import { AT } from './carNumbers';
import type { VehicleData } from './vehicles';

const AIR_CP = 1006;
const SEA_LEVEL_PA = 101325;
const LATENT = 2.43e6;
const WIND_HALVES_AT = 4;
/** Flow under which the condenser breathes air from the engine bay, and the share of it. */
const STILL_KG_PER_S = 0.15;
const BAY_SHARE = 0.35;
/** Share of sprayed water that evaporates before it runs off, and the most it can cool, K. */
const SPRAY_USED = 0.5;
const MOST_SPRAY_K = 12;

export function stepCondenserAir(network: Network, data: VehicleData['condenserAir'], part: CarPart): void {
  const r = network.reserve;
  const wind = r[AT.roadSpeedMPerS];
  let fan = 0;
  for (let i = 0; i < data.fans.length; i++) fan += data.fans[i].flow * r[AT.fanSpeed0 + i];
  const density = r[AT.ambientPressurePa] / SEA_LEVEL_PA;
  const flow =
    density *
    Math.max(
      data.still,
      Math.max(fan, data.ramPerSpeed * wind) + 0.3 * Math.min(fan, data.ramPerSpeed * wind),
    ) *
    r[AT.condenserAirHealth];
  const capacity = Math.max(0.2 * density * data.still, flow) * AIR_CP;
  const conductance = data.conductance * powerNineSixteenths(capacity / (AIR_CP * data.atFlow));
  const given = capacity * (1 - exp(-conductance / capacity));
  const ambient = r[AT.ambientK];
  const still = Math.max(0, 1 - flow / STILL_KG_PER_S);
  const back = data.recirculated / (1 + wind / WIND_HALVES_AT);
  const spray = Math.min(MOST_SPRAY_K, (SPRAY_USED * LATENT * r[AT.sprayKgPerS]) / capacity);
  const inlet =
    ambient + back * (r[AT.condenserOutletK] - ambient) + BAY_SHARE * still * (r[AT.bayK] - ambient) - spray;
  let heat = 0;
  const perCell = given / part.cells;
  for (let i = 0; i < part.cells; i++) {
    const cell = part.firstCell + i;
    heat += perCell * (network.wallTemperatureK(part.vessel, cell) - inlet);
    network.setSurroundings(part.vessel, cell, inlet, perCell);
  }
  r[AT.condenserFlow] = flow;
  r[AT.condenserInletK] = inlet;
  r[AT.condenserOutletK] = inlet + heat / capacity;
  r[AT.condenserHeatW] = heat;
}

export function powerNineSixteenths(x: number): number {
  const half = Math.sqrt(x);
  return half * Math.sqrt(Math.sqrt(Math.sqrt(half)));
}
