/**
 * Leaks by their place. Usual rates in a year: shaft seal 10 to 30 g, hoses together 10 to 20 g, an o-ring 2 to 3 g
 * (Schwarz, emission of R-134a from mobile air conditioning, as a trade text gives it).
 */
import { describe, expect, it } from 'vitest';
import { settleFaults } from '../../src/faults/applyFaults';
import { leakPlaceNamed } from '../../src/faults/leakPlaceNamed';
import { leakPlaces } from '../../src/faults/leakPlaces';
import { faultOf } from '../../src/faults/registry';
import { createCar } from '../../src/loop/car/createCar';
import { vehicleIds, vehicleOf } from '../../src/loop/car/vehicles';
import { MOST_PLACES } from '../../src/plant/tally';

const YEAR_S = 31_557_600;

const carOf = (id: string) =>
  createCar(vehicleOf(id), {
    refrigerant: 'R-134a',
    chargeKg: vehicleOf(id).label.charge,
    ambientK: 293.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });

describe('the places of a loop', () => {
  it.each(vehicleIds)('in the %s have ids of their own and cells that exist', (id) => {
    const car = carOf(id);
    const places = leakPlaces(car);
    expect(new Set(places.map((place) => place.id)).size).toBe(places.length);
    expect(places.length).toBeLessThanOrEqual(MOST_PLACES);
    for (const { port } of places) {
      expect(port.cell).toBeGreaterThanOrEqual(0);
      expect(port.cell).toBeLessThan(car.network.cellCount(port.vessel));
    }
  });

  it('lie on the side that their joint is on: past the orifice low, behind the compressor high', () => {
    const car = carOf('sedan');
    const sideOf = (place: string) => leakPlaceNamed(car, place).port.vessel;
    expect(sideOf('liquid-evaporator')).toBe(car.loop.low);
    expect(sideOf('liquid-condenser')).toBe(car.loop.high);
    expect(sideOf('discharge-compressor')).toBe(car.loop.high);
    expect(sideOf('suction-compressor')).toBe(car.loop.low);
    expect(() => leakPlaceNamed(car, 'sucktion')).toThrow('no part "sucktion"');
  });
});

describe('seepage', () => {
  const gramsAYear = (fault: string, severity: number): number =>
    faultOf(fault).quantity.at(severity) * YEAR_S * 1000;

  it('goes through the usual rates at mild severities', () => {
    expect(gramsAYear('leak-seal', 0.1)).toBeGreaterThan(10);
    expect(gramsAYear('leak-seal', 0.1)).toBeLessThan(30);
    expect(gramsAYear('leak-hose', 0.07)).toBeGreaterThan(10);
    expect(gramsAYear('leak-hose', 0.07)).toBeLessThan(20);
    expect(gramsAYear('leak-joint', 0.05)).toBeGreaterThan(2);
    expect(gramsAYear('leak-joint', 0.05)).toBeLessThan(3);
  });

  it('lets out at 20 °C what it says, within a twentieth, and the books hold the nanograms', () => {
    const car = carOf('hatchback');
    settleFaults(car, [{ id: 'leak-seal', severity: 0.1 }]);
    for (let i = 0; i < 3000; i++) car.step(0.02);
    const books = car.network.books();
    const perYear = (books.ventedKg.refrigerant / 60) * YEAR_S * 1000;
    expect(perYear / gramsAYear('leak-seal', 0.1)).toBeGreaterThan(0.95);
    expect(perYear / gramsAYear('leak-seal', 0.1)).toBeLessThan(1.05);
    expect(books.massErrorRelative).toBeLessThan(1e-12);
  });
});
