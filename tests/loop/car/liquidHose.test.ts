import { describe, expect, it } from 'vitest';
import type { Car } from '../../../src/loop/car/car';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import type { VesselIndex } from '../../../src/loop/networkTypes';
import { addHose, WARM_K } from '../network/vessels';
import { CARS, type CarId } from '../steady';

const STEP_S = 0.02;
const FULL_KG = 0.00595;
const CORE_M2 = 2.2e-6;
/** A swing smaller than this is no swing: a gauge's needle does not show it. */
const STILL_PA = 2000;

function carOf(id: CarId, chargeShare: number): Car {
  const vehicle = vehicleOf(id);
  return createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: Math.max(1.5e-5, vehicle.label.charge * chargeShare),
    ambientK: WARM_K,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
}

/** A 5 mL hose full of liquid, opened to the first cell of the high side. */
function openTo({ network, loop }: Car): VesselIndex {
  const hose = addHose(network, 'hose', FULL_KG);
  expect(network.liquidShare(hose, 0)).toBeGreaterThan(0.95);
  network.addLink({
    kind: 'valve',
    id: 'core',
    from: { vessel: hose, cell: 0, height: 'bulk' },
    to: { vessel: loop.high, cell: 0, height: 'bulk' },
    areaM2: CORE_M2,
    opening: 1,
  });
  return hose;
}

/** Times the pressure of the hose over the high side's turned round, after a swing larger than what is no swing. */
function turns(car: Car, hose: VesselIndex, seconds: number): number {
  const { network, loop } = car;
  const over = (): number => network.pressurePa(hose) - network.pressurePa(loop.high);
  let count = 0;
  let way = 0;
  let from = over();
  for (let i = 0; i < seconds / STEP_S; i++) {
    car.step(STEP_S);
    const p = over();
    // the furthest point on the way it goes, until it has come back from there
    if (way * (p - from) >= 0 && way !== 0) from = p;
    else if (Math.abs(p - from) > STILL_PA) {
      if (way !== 0) count++;
      way = Math.sign(p - from);
      from = p;
    }
  }
  return count;
}

describe.each(CARS)('a hose full of liquid on the %s', (id) => {
  it('does not swing when it is opened to the high side of a running car', () => {
    const car = carOf(id, 1);
    car.set({ engineRevPerS: 25, airConditioningOn: true, blowerStep: 4, windowsOpen: true });
    for (let i = 0; i < 60 / STEP_S; i++) car.step(STEP_S);
    expect(car.number('compressorRevPerS')).toBeGreaterThan(10);
    const hose = openTo(car);
    const before = car.network.pressurePa(hose);
    const high = car.network.pressurePa(car.loop.high);
    expect(high).toBeGreaterThan(before + 200_000);
    expect(turns(car, hose, 10)).toBe(0);
    const apart = car.network.pressurePa(hose) - car.network.pressurePa(car.loop.high);
    expect(Math.abs(apart)).toBeLessThan(STILL_PA);
    expect(car.network.books().massErrorRelative).toBeLessThan(1e-12);
  });

  it('does not swing when it is opened to an evacuated car', () => {
    const car = carOf(id, 0);
    expect(car.network.pressurePa(car.loop.high)).toBeLessThan(1000);
    const hose = openTo(car);
    expect(turns(car, hose, 10)).toBe(0);
    expect(car.network.pressurePa(hose)).toBeLessThan(150_000);
    expect(car.network.books().massErrorRelative).toBeLessThan(1e-12);
  });
});
