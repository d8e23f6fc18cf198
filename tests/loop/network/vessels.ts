/** Stand-in vessels for tests of the network. */
import type { Network } from '../../../src/loop/network';
import type { VesselIndex, VesselSpec } from '../../../src/loop/networkTypes';

export const WARM_K = 300.15;
const AIR_GAS_CONSTANT = 287.05;

export function pot(id: string, litres: number, wallJPerK = 500, outsideWPerK = 1): VesselSpec {
  return {
    id,
    cells: [
      {
        id,
        kind: 'pot',
        volumeM3: litres / 1000,
        wallHeatCapacityJPerK: wallJPerK,
        insideWPerK: [20, 4, 8],
        outsideWPerK,
      },
    ],
  };
}

/** A 0.39 litre can of 45 g of steel, as used for 340 g of refrigerant. */
export function canSpec(): VesselSpec {
  return {
    id: 'can',
    cells: [
      {
        id: 'body',
        kind: 'pot',
        volumeM3: 0.39e-3,
        wallHeatCapacityJPerK: 45,
        insideWPerK: [9, 1, 3],
        outsideWPerK: 0.45,
        aspect: 0.55,
      },
    ],
  };
}

/** A 5 mL hose; rubber gives a little. Full of air, or of 6 g of liquid. */
export function addHose(network: Network, id: string, refrigerantKg = 0): VesselIndex {
  const volumeM3 = 5e-6;
  return network.addVessel(
    {
      id,
      elasticityPerPa: 1e-8,
      cells: [
        {
          id,
          kind: 'pipe',
          volumeM3,
          wallHeatCapacityJPerK: 20,
          insideWPerK: [2, 0.5, 1],
          outsideWPerK: 0.3,
        },
      ],
    },
    {
      temperatureK: WARM_K,
      refrigerantKg,
      airKg: refrigerantKg > 0 ? 0 : (101_325 * volumeM3) / (AIR_GAS_CONSTANT * WARM_K),
    },
  );
}

export function run(network: Network, seconds: number, each?: (second: number) => void): void {
  const steps = Math.round(seconds / 0.02);
  for (let i = 0; i < steps; i++) {
    network.step(0.02);
    if (each && i % 50 === 49) each((i + 1) / 50);
  }
}
