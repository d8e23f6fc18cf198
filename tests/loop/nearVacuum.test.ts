import { describe, expect, it } from 'vitest';
import { hoseSpecs } from '../../src/equipment/hoses';
import { createCar } from '../../src/loop/car/createCar';
import { vehicleOf } from '../../src/loop/car/vehicles';
import { addHose } from '../../src/plant/benchVessels';
import type { RefrigerantId } from '../../src/refrigerant/refrigerant';

const ATMOSPHERE_PA = 101_325;

/** An evacuated loop, a hose of air opened to it, cold or hot, standing for minutes: cells nearly empty must stay numbers. */
function stand(vehicle: string, refrigerant: RefrigerantId, ambientK: number, port: string | null): number[] {
  const day = { pressurePa: ATMOSPHERE_PA, temperatureK: ambientK };
  const car = createCar(vehicleOf(vehicle), {
    refrigerant,
    chargeKg: 1.5e-5,
    ambientK,
    relativeHumidity: 0.6,
    ambientPressurePa: ATMOSPHERE_PA,
    stood: 'equalised',
  });
  const { network, loop } = car;
  const hose = addHose(network, hoseSpecs['gauge-high'], day);
  if (port) {
    const to = { vessel: hose, cell: 0, height: 'bulk' } as const;
    network.addLink({ kind: 'valve', id: 'core', from: car.port(port), to, areaM2: 2.2e-6, opening: 1 });
  }
  for (let i = 0; i < 12_000; i++) car.step(0.02);
  return [loop.high, loop.low].flatMap((vessel) =>
    Array.from({ length: network.cellCount(vessel) }, (_, cell) => network.cellMassKg(vessel, cell)),
  );
}

describe('near vacuum', () => {
  for (const vehicle of ['sedan', 'hatchback']) {
    for (const [refrigerant, ambientK] of [
      ['R-134a', 263.15],
      ['R-1234yf', 323.15],
      ['R-12', 303.15],
    ] as const) {
      for (const port of [null, 'port-a', 'port-b']) {
        it(`${vehicle}, ${refrigerant}, ${ambientK} K, hose on ${port ?? 'nothing'}: every cell holds a number`, () => {
          for (const kg of stand(vehicle, refrigerant, ambientK, port)) {
            expect(Number.isFinite(kg)).toBe(true);
            expect(kg).toBeGreaterThan(0);
          }
        });
      }
    }
  }
});
