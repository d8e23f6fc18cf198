/**
 * The cabin: well mixed air with humidity, and an interior that stores heat. Windows open exchange a flow of outside
 * air; shut, a little leaks. The sun warms mostly the interior. One person gives 80 W and 50 g of water an hour.
 */
import { AT } from './carNumbers';
import type { VehicleData } from './vehicles';

const AIR_CP = 1006;
/** Air that moves with the air proper (trim, dust of surfaces): times its mass. */
const AIR_FACTOR = 1.5;
const PERSON_W = 80;
const PERSON_KG_PER_S = 0.05 / 3600;
const SUN_ON_INTERIOR = 0.7;
/** Outside air that comes in even on recirculation. */
const FRESH_ON_RECIRCULATION = 0.1;

export function stepCabin(r: Float64Array, data: VehicleData['cabin'], dtS: number): void {
  const cabin = r[AT.cabinK];
  const interior = r[AT.interiorK];
  const ambient = r[AT.ambientK];
  const supply = r[AT.coilFlow];
  const exchange = r[AT.windowsOpen] > 0.5 ? data.openWindows : data.leakage;
  const capacity = data.air * AIR_FACTOR * AIR_CP;
  const gain =
    (supply * (r[AT.coilOutletK] - cabin) + exchange * (ambient - cabin)) * AIR_CP +
    data.interiorToAir * (interior - cabin) +
    data.body * (ambient - cabin) +
    (1 - SUN_ON_INTERIOR) * r[AT.sunW] +
    PERSON_W * r[AT.occupants];
  r[AT.cabinK] = cabin + (gain * dtS) / capacity;
  r[AT.interiorK] =
    interior +
    ((data.interiorToAir * (cabin - interior) + SUN_ON_INTERIOR * r[AT.sunW]) * dtS) / data.interior;
  const ratio = r[AT.cabinRatio];
  const water =
    supply * (r[AT.coilOutletRatio] - ratio) +
    exchange * (r[AT.ambientHumidityRatio] - ratio) +
    PERSON_KG_PER_S * r[AT.occupants];
  r[AT.cabinRatio] = Math.max(0, ratio + (water * dtS) / data.air);
  const fresh = r[AT.recirculated] > 0.5 ? FRESH_ON_RECIRCULATION : 1;
  r[AT.coilInletK] = fresh * ambient + (1 - fresh) * r[AT.cabinK];
  r[AT.coilInletRatio] = fresh * r[AT.ambientHumidityRatio] + (1 - fresh) * r[AT.cabinRatio];
}
