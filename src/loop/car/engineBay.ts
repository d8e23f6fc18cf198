/**
 * The engine and the air around it. The engine warms to 90 °C in some ten minutes and stays warm for an hour; the bay
 * stands between it and the weather, cooler with wind and with the bonnet up. The sun that gives the cabin 800 W warms the
 * bay of a standing car by some 5 K. All figures [guess].
 */
import type { Network } from '../network';
import type { CarPart } from './assembleLoop';
import { AT } from './carNumbers';

const ENGINE_K = 363;
const WARMING_S = 500;
const COOLING_S = 4200;
const BAY_LAG_S = 60;
const BAY_SHARE_RUNNING = 0.16;
const BAY_SHARE_STANDING = 0.3;
const WIND_HALVES_AT = 8;
const SUN_K_PER_W = 0.006;

export function stepEngineBay(network: Network, bayParts: readonly CarPart[], dtS: number): void {
  const r = network.reserve;
  const running = r[AT.engineRevPerS] > 0;
  const ambient = r[AT.ambientK];
  const engine = r[AT.engineK];
  r[AT.engineK] = engine + (running ? (ENGINE_K - engine) / WARMING_S : (ambient - engine) / COOLING_S) * dtS;
  const still = 1 / (1 + r[AT.roadSpeedMPerS] / WIND_HALVES_AT);
  const share = (running ? BAY_SHARE_RUNNING : BAY_SHARE_STANDING) * still;
  const sunK = SUN_K_PER_W * r[AT.sunW] * still;
  const bay = r[AT.bayK];
  r[AT.bayK] = bay + ((ambient + share * (engine - ambient) + sunK - bay) * dtS) / BAY_LAG_S;
  for (const part of bayParts) {
    for (let i = 0; i < part.cells; i++) {
      network.setSurroundings(part.vessel, part.firstCell + i, r[AT.bayK], part.outsideWPerK);
    }
  }
}
