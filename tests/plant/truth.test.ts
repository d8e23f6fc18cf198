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

  const read = (id: string): number =>
    truthSignals({ ...parts, car })
      .find(({ spec }) => spec.id === id)
      ?.read() ?? Number.NaN;
  // state points are of what flows: throttling leaves the heat as it is, and the compressor draws no liquid here
  expect(read('metering.massFlowKgPerS')).toBeGreaterThan(0.005);
  expect(read('point4.enthalpyJPerKg')).toBe(read('point3.enthalpyJPerKg'));
  expect(read('point4.pressurePa')).toBe(read('lowSide.pressurePa'));
  expect(read('point1.enthalpyJPerKg')).toBeGreaterThan(read('point4.enthalpyJPerKg'));
  // a stretch holds as much liquid as its cells do
  const cells = Array.from({ length: 8 }, (_, i) => read(`vessel.condenser.cell${i + 1}.liquidRatio`));
  const mean = cells.reduce((sum, ratio) => sum + ratio, 0) / cells.length;
  expect(mean).toBeCloseTo(read('vessel.condenser.liquidRatio'), 12);
  expect(read('vessel.condenser.cell9.liquidRatio')).toBeNaN();
  expect(read('rearMetering.massFlowKgPerS')).toBeGreaterThan(0);
});
