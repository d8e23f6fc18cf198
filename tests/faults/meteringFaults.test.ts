import { describe, expect, it } from 'vitest';
import { faultOf, faultsFor } from '../../src/faults/registry';
import { createCar } from '../../src/loop/car/createCar';
import { vehicleOf } from '../../src/loop/car/vehicles';

const TUBE = ['oversized-orifice', 'missing-orifice'];
const VALVE = ['txv-stuck-open', 'txv-stuck-closed'];
const BULB = ['bulb-charge-lost', 'bulb-loose'];

describe('faults of a metering device and the line before it', () => {
  it('are in the cars that have such a part, and no other', () => {
    const hatchback = faultsFor(vehicleOf('hatchback')).map(({ id }) => id);
    const sedan = faultsFor(vehicleOf('sedan')).map(({ id }) => id);
    expect(hatchback).toEqual(
      expect.arrayContaining([...VALVE, ...BULB, 'drier-restricted', 'liquid-line-restricted']),
    );
    expect(sedan).toEqual(expect.arrayContaining([...TUBE, 'liquid-line-restricted']));
    for (const id of TUBE) expect(hatchback).not.toContain(id);
    for (const id of [...VALVE, ...BULB, 'drier-restricted']) expect(sedan).not.toContain(id);
  });

  it('of a bulb need one: a block valve has its element inside (a technician’s review)', () => {
    const hatchback = vehicleOf('hatchback');
    if (hatchback.metering.kind !== 'expansion-valve')
      throw new Error('the hatchback has an expansion valve');
    const block = { ...hatchback, metering: { ...hatchback.metering, sensing: 'block' as const } };
    for (const id of BULB) expect(faultOf(id).applies(block)).toBe(false);
    for (const id of VALVE) expect(faultOf(id).applies(block)).toBe(true);
  });

  it('of the drier do nothing on a car without one', () => {
    const vehicle = vehicleOf('sedan');
    const car = createCar(vehicle, {
      refrigerant: 'R-134a',
      chargeKg: vehicle.label.charge,
      ambientK: 305.15,
      relativeHumidity: 0.5,
      stood: 'equalised',
    });
    car.edit('drierHealth', 0.01);
    expect(car.network.meter(car.loop.metering, 'drierAreaM2')).toBe(0);
    car.edit('liquidLineHealth', 0.5);
    expect(car.network.meter(car.loop.metering, 'lineAreaM2')).toBeCloseTo(1e-5, 12);
    car.edit('liquidLineHealth', 1);
    expect(car.network.meter(car.loop.metering, 'lineAreaM2')).toBe(0);
  });
});
