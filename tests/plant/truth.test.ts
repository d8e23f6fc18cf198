import { expect, it } from 'vitest';
import { createCar } from '../../src/loop/car/createCar';
import { truthSignals } from '../../src/plant/signals/truth';
import { rearCar } from '../support/rearCar';
import { serviceBench } from '../support/serviceBench';

it('capacity is that of both coils where there is a rear one', () => {
  const { parts } = serviceBench('sedan', 32);
  const vehicle = rearCar('orifice-tube');
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.set({
    engineRevPerS: 25,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: false,
  });
  for (let i = 0; i < 30 * 50; i++) car.step(0.02);
  const capacity = truthSignals({ ...parts, car }).find(({ spec }) => spec.id === 'capacityW');
  const front = car.number('coilHeatW');
  expect(capacity?.read()).toBeGreaterThan(front);
  expect(capacity?.read()).toBe(front + car.number('rearHeatW'));
});
