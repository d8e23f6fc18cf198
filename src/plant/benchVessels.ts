/**
 * Hoses and cans as vessels of the network: a hose starts full of air at the pressure of the day, a can holds its net
 * content at the temperature of the bay.
 */
import { CAN_AIR_UA_W_PER_K, CAN_VOLUME_M3, CAN_WALL_J_PER_K, type CanSpec } from '../equipment/cans';
import { type HoseSpec, hoseVolumeM3 } from '../equipment/hoses';
import type { Network } from '../loop/network';
import type { VesselIndex } from '../loop/networkTypes';

export interface DayAir {
  readonly pressurePa: number;
  readonly temperatureK: number;
}

/** Specific gas constant of air, J/(kg K): 8.314 J/(mol K) over 0.028966 kg/mol. */
export const AIR_J_PER_KG_K = 287.05;
/** Rubber hose: wall and what it takes from the air round it, per metre. Estimates, no source. */
const HOSE_WALL_J_PER_K_M = 120;
const HOSE_OUTSIDE_W_PER_K_M = 0.8;
/** Grows a little under pressure; keeps a liquid-full hose from being infinitely stiff. */
const HOSE_ELASTICITY_PER_PA = 1e-8;

export function addHose(network: Network, spec: HoseSpec, day: DayAir): VesselIndex {
  const volumeM3 = hoseVolumeM3(spec);
  const hose = network.addVessel(
    {
      id: `hose:${spec.id}`,
      elasticityPerPa: HOSE_ELASTICITY_PER_PA,
      cells: [
        {
          id: 'bore',
          kind: 'pipe',
          volumeM3,
          wallHeatCapacityJPerK: HOSE_WALL_J_PER_K_M * spec.lengthM,
          insideWPerK: [4, 1, 2],
          outsideWPerK: HOSE_OUTSIDE_W_PER_K_M * spec.lengthM,
        },
      ],
    },
    {
      temperatureK: day.temperatureK,
      refrigerantKg: 0,
      airKg: (day.pressurePa * volumeM3) / (AIR_J_PER_KG_K * day.temperatureK),
    },
  );
  network.setSurroundings(hose, 0, day.temperatureK, HOSE_OUTSIDE_W_PER_K_M * spec.lengthM);
  return hose;
}

/** Contents of `kg`, of the loop's own fluid or of the foreign one. */
export function charged(kg: number, foreign: boolean): { refrigerantKg: number; foreignKg: number } {
  return foreign ? { refrigerantKg: 0, foreignKg: kg } : { refrigerantKg: kg, foreignKg: 0 };
}

/** `foreign`: what is in it is not what is in the loop. */
export function addCan(network: Network, spec: CanSpec, day: DayAir, foreign = false): VesselIndex {
  const can = network.addVessel(
    {
      id: `can:${spec.id}`,
      cells: [
        {
          id: 'body',
          kind: 'pot',
          volumeM3: CAN_VOLUME_M3,
          wallHeatCapacityJPerK: CAN_WALL_J_PER_K,
          insideWPerK: [4, 1, 2.5],
          outsideWPerK: CAN_AIR_UA_W_PER_K,
          outletHeight: 1,
          aspect: 0.55,
        },
      ],
    },
    {
      temperatureK: day.temperatureK,
      ...charged(spec.netKg, foreign),
      oilKg: (spec.oilKg ?? 0) + (spec.dyeKg ?? 0),
      sealantKg: spec.sealerKg ?? 0,
    },
  );
  network.setSurroundings(can, 0, day.temperatureK, CAN_AIR_UA_W_PER_K);
  return can;
}
