import { describe, expect, it } from 'vitest';
import { leakingReed } from '../../../src/faults/leakingReed';
import type { Car } from '../../../src/loop/car/car';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import type { CarId } from '../steady';

const PA_PER_PSI = 6894.757;

/** A car with a leaking reed after four minutes of running. */
function leaking(id: CarId, severity: number): Car {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.edit('reedLeakKgPerSPa', leakingReed.parameters?.(severity, vehicle).reedLeakKgPerSPa ?? 0);
  car.set({
    engineRevPerS: 25,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: true,
  });
  for (let i = 0; i < 12_000; i++) car.step(0.02);
  return car;
}

/** Sides apart, psi, two minutes after it was stopped. */
function apartAfterTwoMinutes(id: CarId, severity: number): number {
  const car = leaking(id, severity);
  car.set({ engineRevPerS: 0 });
  for (let i = 0; i < 6000; i++) car.step(0.02);
  expect(car.network.books().energyErrorRelative).toBeLessThan(1e-10);
  return (car.network.pressurePa(car.loop.high) - car.network.pressurePa(car.loop.low)) / PA_PER_PSI;
}

describe('while it runs', () => {
  it('what leaks back does not count as pumped: compressor and metering device pass the same', () => {
    const { network, loop } = leaking('hatchback', 0.8);
    const metered = network.massFlowKgPerS(loop.metering);
    expect(Math.abs(network.massFlowKgPerS(loop.compressor) / metered - 1)).toBeLessThan(0.03);
    expect(network.linkMemory(loop.compressor, 1)).toBeGreaterThan(1.3 * metered);
  });
});

describe('two minutes after a stop', () => {
  it('a leaking reed has brought a car with an expansion valve level, a sound one is far from it (military manual)', () => {
    expect(apartAfterTwoMinutes('hatchback', 0.8)).toBeLessThan(5);
    expect(apartAfterTwoMinutes('hatchback', 0)).toBeGreaterThan(30);
  });

  it('a car with an orifice tube is level either way, so there it proves nothing (technician’s review 1.6)', () => {
    expect(apartAfterTwoMinutes('sedan', 0.8)).toBeLessThan(5);
    expect(apartAfterTwoMinutes('sedan', 0)).toBeLessThan(5);
  });
});
