import { describe, expect, it } from 'vitest';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { ROOM } from '../../../src/loop/networkTypes';

describe('many wide ways out of one cell', () => {
  it.each(['hatchback', 'sedan'])('never take more than the %s has', (id) => {
    const vehicle = vehicleOf(id);
    const car = createCar(vehicle, {
      refrigerant: 'R-134a',
      chargeKg: vehicle.label.charge,
      ambientK: 303.15,
      relativeHumidity: 0.5,
      stood: 'equalised',
    });
    const { network } = car;
    for (const { port } of car.loop.ports)
      for (let i = 0; i < 6; i++)
        network.addLink({
          kind: 'valve',
          id: `way:${port.vessel}:${port.cell}:${i}`,
          from: port,
          to: { vessel: ROOM, cell: 0, height: 'bulk' },
          areaM2: 50e-6,
          opening: 1,
        });
    for (let i = 0; i < 3000; i++) {
      car.step(0.02);
      for (const { port } of car.loop.ports)
        expect(network.cellMassKg(port.vessel, port.cell)).toBeGreaterThan(0);
    }
    const books = network.books();
    expect(books.heldKg.refrigerant).toBeLessThan(0.1 * vehicle.label.charge);
    expect(books.massErrorRelative).toBeLessThan(1e-12);
    expect(books.energyErrorRelative).toBeLessThan(1e-10);
  });
});
