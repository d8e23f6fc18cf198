import { describe, expect, it } from 'vitest';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { withoutCutOut } from '../../support/otherCompressors';
import { CARS } from '../steady';

describe('the relief valve', () => {
  for (const id of CARS) {
    it(`${id}: with the high-pressure switch bridged and no fan it opens at its set point, vents, and shuts again`, () => {
      const vehicle = withoutCutOut(vehicleOf(id));
      const { opens, closes } = vehicle.switches.relief;
      const car = createCar(vehicle, {
        refrigerant: 'R-134a',
        chargeKg: vehicle.label.charge,
        ambientK: 305.15,
        relativeHumidity: 0.5,
        stood: 'equalised',
      });
      car.edit('fanHealth0', 0);
      car.edit('fanHealth1', 0);
      car.set({ engineRevPerS: 25, airConditioningOn: true, blowerStep: 4, windowsOpen: true });
      const { network, loop } = car;
      let was = 0;
      let opened = 0;
      let shut = 0;
      let highest = 0;
      for (let i = 0; i < 12_000; i++) {
        car.step(0.02);
        const gauge = network.pressurePa(loop.high) - 101_325;
        const open = network.linkMemory(loop.relief, 0);
        highest = Math.max(highest, gauge);
        if (open > was) {
          opened += 1;
          expect(gauge).toBeGreaterThan(opens - 50_000);
        }
        if (open < was) {
          shut += 1;
          expect(gauge).toBeLessThan(closes + 50_000);
        }
        was = open;
      }
      expect(opened).toBeGreaterThan(0);
      expect(shut).toBe(opened);
      // it holds the pressure to a tenth over where it opens
      expect(highest).toBeLessThan(1.1 * opens);
      const books = network.books();
      expect(books.ventedKg.refrigerant).toBeGreaterThan(0.05);
      expect(books.massErrors.refrigerant).toBeLessThan(1e-12);
      expect(books.energyErrorRelative).toBeLessThan(1e-10);
    });
  }
});
