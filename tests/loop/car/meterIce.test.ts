import { describe, expect, it } from 'vitest';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';

/** A closed cabin on a mild day, so that the coil comes below freezing; the drier is full of water and more goes round. */
function wetCar(waterKg: number) {
  const vehicle = vehicleOf('hatchback');
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 300.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
    waterKg,
  });
  car.set({ engineRevPerS: 25, airConditioningOn: true, blowerStep: 4, recirculated: true, occupants: 1 });
  return car;
}

const ZERO_C = 273.15;

describe('water that freezes in the metering device (service text: low side from normal to vacuum, cooling comes and goes)', () => {
  it('draws the low side into a vacuum and the high side down, lets go, and does it again', () => {
    const car = wetCar(0.012);
    const { network, loop } = car;
    const gaugePa = (vessel: number): number => network.pressurePa(vessel) - 101_325;
    let vacuums = 0;
    let choked = false;
    let warmestK = 0;
    let lowestHighPa = 1e9;
    let highestHighPa = 0;
    for (let i = 0; i < 50 * 600; i++) {
      car.step(0.02);
      const low = gaugePa(loop.low);
      if (!choked && low < -50_000) {
        choked = true;
        vacuums++;
      }
      if (choked && low > 150_000) choked = false;
      if (choked) {
        warmestK = Math.max(warmestK, car.number('coilOutletK'));
        lowestHighPa = Math.min(lowestHighPa, gaugePa(loop.high));
      } else highestHighPa = Math.max(highestHighPa, gaugePa(loop.high));
    }
    expect(vacuums).toBeGreaterThanOrEqual(2);
    expect(warmestK - ZERO_C).toBeGreaterThan(18);
    // printed for 1.4 to 1.75 MPa: down to 0.7 to 1.0, so to about six tenths
    expect(lowestHighPa / highestHighPa).toBeLessThan(0.7);
    expect(network.books().massErrors.water).toBeLessThan(1e-12);

    // at rest it thaws
    car.set({ engineRevPerS: 0, airConditioningOn: false });
    for (let i = 0; i < 50 * 300; i++) car.step(0.02);
    expect(network.meter(loop.metering, 'iceKg')).toBe(0);
  });

  it('does not happen while the drier takes the water up', () => {
    const car = wetCar(0.004);
    for (let i = 0; i < 50 * 300; i++) car.step(0.02);
    expect(car.network.meter(car.loop.metering, 'iceKg')).toBeLessThan(1e-6);
  });
});
