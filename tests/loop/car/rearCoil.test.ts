import { describe, expect, it } from 'vitest';
import { partNamed } from '../../../src/loop/car/assembleLoop';
import type { Car } from '../../../src/loop/car/car';
import { readCar } from '../../../src/loop/car/carReadings';
import { createCar } from '../../../src/loop/car/createCar';
import { type VehicleData, vehicleOf } from '../../../src/loop/car/vehicles';
import { rearCar } from '../../support/rearCar';

const STEP_S = 0.02;

function running(vehicle: VehicleData, rearBlowerStep: number): Car {
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
    rearBlowerStep,
    windowsOpen: true,
    recirculated: true,
  });
  return car;
}

function run(car: Car, seconds: number): Car {
  for (let i = 0; i < seconds / STEP_S; i++) car.step(STEP_S);
  return car;
}

/** kg/s into the front coil and into the rear one. */
const flows = ({ network, loop }: Car): readonly [number, number] => [
  network.massFlowKgPerS(loop.metering),
  network.massFlowKgPerS(loop.rearMetering),
];

describe('a rear unit', () => {
  for (const metering of ['expansion-valve', 'orifice-tube'] as const) {
    it(`with ${metering === 'orifice-tube' ? 'an orifice tube' : 'an expansion valve'} cools beside the front one, and the books hold`, () => {
      const car = run(running(rearCar(metering), 2), 400);
      expect(car.number('ventK')).toBeLessThan(305.15 - 8);
      expect(car.number('rearVentK')).toBeLessThan(305.15 - 8);
      expect(car.number('rearHeatW')).toBeGreaterThan(800);
      expect(car.number('coilHeatW')).toBeGreaterThan(car.number('rearHeatW'));
      const [front, rear] = flows(car);
      expect(front).toBeGreaterThan(rear);
      expect(rear).toBeGreaterThan(0.004);
      expect(car.network.massFlowKgPerS(car.loop.compressor)).toBeCloseTo(front + rear, 3);
      expect(readCar(car).capacityW).toBe(car.number('coilHeatW') + car.number('rearHeatW'));
      const { massErrorRelative, energyErrorRelative } = car.network.books();
      expect(massErrorRelative).toBeLessThan(1e-12);
      expect(energyErrorRelative).toBeLessThan(1e-10);
    });
  }

  it('with its blower off leaves the front coil cold; its valve gives it little, and there is no valve that shuts it', () => {
    const car = run(running(rearCar('expansion-valve'), 0), 400);
    expect(car.number('rearHeatW')).toBeLessThan(150);
    expect(car.number('ventK')).toBeLessThan(305.15 - 12);
    const [front, rear] = flows(car);
    expect(rear).toBeGreaterThan(0);
    expect(rear).toBeLessThan(0.3 * front);
    expect(car.network.books().energyErrorRelative).toBeLessThan(1e-10);
  });

  it('holds refrigerant of its own, so such a car takes more', () => {
    const car = run(running(rearCar('orifice-tube'), 2), 200);
    const held = ['rear-evaporator', 'rear-suction'].reduce((kg, name) => {
      const { vessel, firstCell, cells } = partNamed(car.loop.parts, name);
      for (let i = 0; i < cells; i++) kg += car.network.cellMassKg(vessel, firstCell + i);
      return kg;
    }, 0);
    expect(held).toBeGreaterThan(0.025);
    expect(car.vehicle.label.charge).toBeGreaterThan(vehicleOf('sedan').label.charge + held);
  });

  it('drains to the join and not into the front coil', () => {
    const car = running(rearCar('orifice-tube'), 2);
    const order = ['evaporator', 'rear-evaporator', 'rear-suction', 'accumulator', 'suction', 'compressor'];
    expect(car.loop.parts.filter(({ vessel }) => vessel === car.loop.low).map(({ part }) => part)).toEqual(
      order,
    );
    const { spec } = car.network.structure().vessels.filter(({ slot }) => slot === car.loop.low)[0];
    const front = partNamed(car.loop.parts, 'evaporator');
    expect(spec.cells[front.firstCell + front.cells - 1].drainsTo).toBe('accumulator');
    const rear = partNamed(car.loop.parts, 'rear-suction');
    expect(spec.cells[rear.firstCell].drainsTo).toBeUndefined();
  });

  it('cannot join what is not behind the front coil', () => {
    const long = rearCar('orifice-tube');
    const { rear } = long;
    if (!rear) throw new RangeError('no rear unit');
    expect(() => running({ ...long, rear: { ...rear, joins: 'condenser' } }, 2)).toThrow(
      'cannot join "condenser"',
    );
    expect(() => running({ ...long, rear: { ...rear, joins: 'evaporator' } }, 2)).toThrow('cannot join');
  });
});
