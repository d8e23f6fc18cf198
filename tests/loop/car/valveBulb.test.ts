import { describe, expect, it } from 'vitest';
import { partNamed } from '../../../src/loop/car/assembleLoop';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';

/** Least and greatest superheat at the coil's outlet, K, in two minutes after six, windows open, 32 °C, 1,500 rpm. */
function superheats(blowerStep: number, bulbLoose: number): { least: number; most: number; lowPa: number } {
  const vehicle = vehicleOf('hatchback');
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.edit('bulbLoose', bulbLoose);
  car.set({ engineRevPerS: 25, airConditioningOn: true, blowerStep, windowsOpen: true, recirculated: true });
  const { network, loop } = car;
  const coil = partNamed(loop.parts, 'evaporator');
  let least = 1e9;
  let most = -1e9;
  for (let i = 0; i < 50 * 480; i++) {
    car.step(0.02);
    if (i < 50 * 360) continue;
    const superheat =
      network.temperatureK(coil.vessel, coil.firstCell + coil.cells - 1) -
      network.saturationTemperatureK(coil.vessel);
    least = Math.min(least, superheat);
    most = Math.max(most, superheat);
  }
  return { least, most, lowPa: network.pressurePa(loop.low) };
}

describe('the bulb of an expansion valve', () => {
  const tight = superheats(4, 0);

  it('clamped on its line holds a loaded coil steady, within half a kelvin', () => {
    expect(tight.most - tight.least).toBeLessThan(0.5);
    expect(superheats(2, 0).most - superheats(2, 0).least).toBeLessThan(0.5);
  });

  it('loose, at a low blower, makes the valve hunt by more than 4 K (common trade expectation)', () => {
    const loose = superheats(2, 0.3);
    expect(loose.most - loose.least).toBeGreaterThan(4);
  });

  it('looser still leaves next to no superheat and raises the low side (a valve maker’s service text)', () => {
    const loose = superheats(4, 0.6);
    expect(loose.most).toBeLessThan(tight.least - 2);
    expect(loose.lowPa).toBeGreaterThan(tight.lowPa + 8_000);
  });
});
