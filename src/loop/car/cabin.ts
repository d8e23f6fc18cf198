/**
 * The cabin: well mixed air with humidity, and an interior that stores heat. Windows open exchange a flow of outside
 * air; shut, a little leaks; both go with the pressure of the air. The sun warms mostly the interior. One person gives
 * 80 W and 50 g of water an hour. A rear unit takes its air from the cabin and gives it back.
 */
import { AT } from './carNumbers';
import type { VehicleData } from './vehicles';

const AIR_CP = 1006;
/** Air that moves with the air proper (trim, dust of surfaces): times its mass. */
const AIR_FACTOR = 1.5;
const SEA_LEVEL_PA = 101325;
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
  const rear = r[AT.rearFlow];
  const density = r[AT.ambientPressurePa] / SEA_LEVEL_PA;
  const exchange = density * (r[AT.windowsOpen] > 0.5 ? data.openWindows : data.leakage);
  const capacity = data.air * AIR_FACTOR * AIR_CP;
  const supplied = supply * (r[AT.ventK] - cabin) + rear * (r[AT.rearVentK] - cabin);
  const gain =
    (supplied + exchange * (ambient - cabin)) * AIR_CP +
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
    rear * (r[AT.rearOutletRatio] - ratio) +
    exchange * (r[AT.ambientHumidityRatio] - ratio) +
    PERSON_KG_PER_S * r[AT.occupants];
  r[AT.cabinRatio] = Math.max(0, ratio + (water * dtS) / data.air);
  const fresh = r[AT.recirculated] > 0.5 ? FRESH_ON_RECIRCULATION : 1;
  r[AT.coilInletK] = fresh * ambient + (1 - fresh) * r[AT.cabinK];
  r[AT.coilInletRatio] = fresh * r[AT.ambientHumidityRatio] + (1 - fresh) * r[AT.cabinRatio];
  r[AT.rearInletK] = r[AT.cabinK];
  r[AT.rearInletRatio] = r[AT.cabinRatio];
}
