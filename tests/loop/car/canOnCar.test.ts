import { describe, expect, it } from 'vitest';
import type { Car } from '../../../src/loop/car/car';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import type { LinkIndex, VesselIndex } from '../../../src/loop/networkTypes';
import { canSpec, WARM_K } from '../network/vessels';
import { CARS, type CarId, psi } from '../steady';

const HOSE_M3 = 33e-6;
const NET_KG = 0.34;
const LOW_PORT: Record<CarId, string> = { hatchback: 'port-b', sedan: 'port-a' };
const HIGH_PORT: Record<CarId, string> = { hatchback: 'port-a', sedan: 'port-b' };

interface Joined {
  readonly car: Car;
  readonly can: VesselIndex;
  readonly hose: VesselIndex;
  readonly tap: LinkIndex;
}

/** A car with half its charge, a can on one of its ports, all valves open but the can's. */
function withCan(id: CarId, portId: string, chargeShare: number, running: boolean): Joined {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: chargeShare * vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.set({
    engineRevPerS: running ? 25 : 0,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: true,
  });
  run(car, 300);
  const { network } = car;
  const can = network.addVessel(canSpec(), { temperatureK: WARM_K, refrigerantKg: NET_KG });
  const hose = network.addVessel(
    {
      id: 'hose',
      elasticityPerPa: 1e-8,
      cells: [
        {
          id: 'hose',
          kind: 'pipe',
          volumeM3: HOSE_M3,
          wallHeatCapacityJPerK: 60,
          insideWPerK: [4, 1, 2],
          outsideWPerK: 0.5,
        },
      ],
    },
    { temperatureK: WARM_K, refrigerantKg: 1e-5 },
  );
  const bulk = { vessel: hose, cell: 0, height: 'bulk' } as const;
  const tap = network.addLink({
    kind: 'valve',
    id: 'tap',
    from: { vessel: can, cell: 0, height: 1 },
    to: bulk,
    areaM2: 0.9e-6,
    opening: 0,
  });
  network.addLink({
    kind: 'valve',
    id: 'core',
    from: bulk,
    to: car.port(portId),
    areaM2: 2.2e-6,
    opening: 1,
  });
  run(car, 5);
  return { car, can, hose, tap };
}

function run(car: Car, seconds: number): void {
  for (let i = 0; i < seconds * 50; i++) car.step(0.02);
}

describe('a can on the low side of a running car', () => {
  for (const id of CARS) {
    it(`${id}: the gauge on the hose reads higher with the can open than shut`, () => {
      const { car, hose, tap } = withCan(id, LOW_PORT[id], 0.5, true);
      // over the low side, which swings with the clutch
      const over = (): number => car.network.pressurePa(hose) - car.network.pressurePa(car.loop.low);
      const shut = over();
      car.network.setOpening(tap, 1);
      run(car, 3);
      expect(psi(over() - shut)).toBeGreaterThan(1);
    });

    it(`${id}: weighs out of the can what goes into the loop and the hose`, () => {
      const { car, can, tap } = withCan(id, LOW_PORT[id], 0.5, true);
      car.network.setOpening(tap, 1);
      run(car, 60);
      const { network, loop } = car;
      const gone = NET_KG - network.massKg(can, 'refrigerant');
      expect(gone).toBeGreaterThan(0.03);
      const held = network.massKg(loop.high, 'refrigerant') + network.massKg(loop.low, 'refrigerant');
      const hose = network.massKg(network.vesselNamed('hose'), 'refrigerant');
      expect(held + hose - 0.5 * car.vehicle.label.charge - 1e-5).toBeCloseTo(gone, 9);
    });
  }

  it('upside down on a suction-line port sends liquid through the compressor; on an accumulator port far less', () => {
    const slugged = (id: CarId): number => {
      const { car, can, tap } = withCan(id, LOW_PORT[id], 0.5, true);
      const before = car.network.linkMemory(car.loop.compressor, 0);
      car.network.setTilt(can, 180);
      car.network.setOpening(tap, 1);
      run(car, 60);
      expect(car.network.massKg(can, 'refrigerant')).toBeLessThan(0.1 * NET_KG);
      return car.network.linkMemory(car.loop.compressor, 0) - before;
    };
    const suction = slugged('hatchback');
    expect(suction).toBeGreaterThan(0.03);
    expect(slugged('sedan')).toBeLessThan(0.3 * suction);
  });
});

describe('a can opened to the running high side', () => {
  for (const id of CARS) {
    it(`${id}: fills with what comes out of the car, and follows its pressure within seconds`, () => {
      const { car, can, tap } = withCan(id, HIGH_PORT[id], 1, true);
      const { network, loop } = car;
      network.setOpening(tap, 1);
      run(car, 3);
      expect(network.massFlowKgPerS(tap)).toBeLessThan(0);
      expect(network.massKg(can, 'refrigerant')).toBeGreaterThan(NET_KG + 0.005);
      run(car, 57);
      expect(network.pressurePa(can)).toBeGreaterThan(0.9 * network.pressurePa(loop.high));
      expect(psi(network.pressurePa(can) - 101_325)).toBeGreaterThan(150);
    });
  }
});
