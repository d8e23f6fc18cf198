/** A car on which everything can go wrong: two hoses, two cans, an open port and a vacuum pump, joined at random. */
import { keyedUniform } from '../../numerics/keyedRandom';
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import type { Car, CarStart } from '../car/car';
import { createCar } from '../car/createCar';
import type { VehicleData } from '../car/vehicles';
import { FOREIGN_IDS, type ForeignId } from '../foreign';
import { type Contents, type LinkIndex, type Port, ROOM, type VesselIndex } from '../networkTypes';

export type Draw = (purpose: string) => number;

export interface FuzzCar {
  readonly car: Car;
  readonly cans: readonly VesselIndex[];
  readonly valves: readonly LinkIndex[];
  readonly pump: LinkIndex;
}

const FLUIDS: readonly RefrigerantId[] = ['R-134a', 'R-12', 'R-1234yf'];
const HOSE_M3 = 5e-6;
const CAN_M3 = 0.39e-3;
const AIR_GAS_CONSTANT = 287.05;
const VALVE_M2 = [0.9e-6, 3e-6, 3e-6, 0.9e-6, 3e-6, 3e-6, 4e-6, 1e-6] as const;

/** Keyed by seed and by how many draws were made, so a run can be repeated from its seed. */
export function drawer(seed: number): Draw {
  let count = 0;
  return (purpose) => keyedUniform(seed, purpose, 'fuzz', count++);
}

export function buildFuzzCar(draw: Draw, vehicles: readonly VehicleData[]): FuzzCar {
  const vehicle = vehicles[Math.floor(draw('vehicle') * vehicles.length)];
  const ambientK = 263.15 + 60 * draw('ambient');
  const fluid = FLUIDS[Math.floor(draw('fluid') * FLUIDS.length)];
  const others = FOREIGN_IDS.filter((id) => id !== fluid);
  const car = createCar(vehicle, {
    refrigerant: fluid,
    ...startingContents(draw, vehicle.label.charge),
    ...besides(draw, others[Math.floor(draw('other') * others.length)]),
    ambientK,
    relativeHumidity: draw('humidity'),
    ambientPressurePa: 70000 + 35000 * draw('height'),
    stood: draw('stood') < 0.5 ? 'equalised' : 'soaked',
  });
  if (car.network.foreign() === null) car.network.setForeign(others[0]);
  return { car, ...joinEquipment(car, ambientK, draw) };
}

/** Evacuated, full of air, as labelled, overfull or anything between. */
function startingContents(draw: Draw, labelKg: number): { chargeKg: number; airKg: number } {
  const kind = draw('contents');
  if (kind < 0.15) return { chargeKg: 2e-6, airKg: 0 };
  if (kind < 0.3) return { chargeKg: 2e-6, airKg: 0.003 };
  if (kind < 0.4) return { chargeKg: labelKg * draw('charge'), airKg: 0.005 * draw('air') };
  if (kind < 0.5) return { chargeKg: labelKg * (1 + 0.9 * draw('charge')), airKg: 0 };
  return { chargeKg: labelKg, airKg: 0 };
}

/** In half of the cars: a foreign fluid, water, too much oil or too little. */
function besides(draw: Draw, fluid: ForeignId): Pick<CarStart, 'foreign' | 'waterKg' | 'extraOilKg'> {
  if (draw('besides') < 0.5) return {};
  return {
    foreign: { fluid, share: draw('share') },
    waterKg: draw('wet') < 0.5 ? 0 : 0.03 * draw('water'),
    extraOilKg: -0.15 + 0.4 * draw('oil'),
  };
}

function joinEquipment(car: Car, ambientK: number, draw: Draw): Omit<FuzzCar, 'car'> {
  const { network } = car;
  const hoses = ['hose-a', 'hose-b'].map((id) => addHose(car, id, ambientK));
  const cans = ['can-a', 'can-b'].map((id) => addCan(car, id, canContents(ambientK, draw)));
  const at = (vessel: VesselIndex): Port => ({ vessel, cell: 0, height: 'bulk' });
  const ends: readonly (readonly [Port, Port])[] = [
    [{ vessel: cans[0], cell: 0, height: 1 }, at(hoses[0])],
    [at(hoses[0]), car.port(car.portIds[0])],
    [at(hoses[0]), at(hoses[1])],
    [{ vessel: cans[1], cell: 0, height: 1 }, at(hoses[1])],
    [at(hoses[1]), car.port(car.portIds[1])],
    [at(hoses[1]), at(ROOM)],
    [car.port(car.portIds[0]), at(ROOM)],
    [car.port(car.portIds[1]), at(ROOM)],
  ];
  const valves = ends.map(([from, to], i) =>
    network.addLink({ kind: 'valve', id: `fuzz-${i}`, from, to, areaM2: VALVE_M2[i], opening: 0 }),
  );
  const pump = network.addLink({
    kind: 'pump',
    id: 'pump',
    from: at(hoses[0]),
    to: at(ROOM),
    speedM3PerS: 1.5e-3,
    ultimatePa: 20,
    opening: 0,
  });
  return { cans, valves, pump };
}

/** Refrigerant; and in half of them anything else too. */
function canContents(temperatureK: number, draw: Draw): Contents {
  const kg = draw('can') * 0.4;
  if (draw('mixed') < 0.5) return { temperatureK, refrigerantKg: kg };
  const share = draw('other') < 0.3 ? 1 : draw('share');
  return {
    temperatureK,
    refrigerantKg: kg * (1 - share),
    foreignKg: kg * share,
    airKg: 0.0003 * draw('air'),
    waterKg: 0.003 * draw('water'),
    oilKg: 0.06 * draw('oil'),
    sealantKg: 0.03 * draw('sealant'),
  };
}

function addHose({ network }: Car, id: string, ambientK: number): VesselIndex {
  return network.addVessel(
    {
      id,
      elasticityPerPa: 1e-8,
      cells: [
        {
          id,
          kind: 'pipe',
          volumeM3: HOSE_M3,
          wallHeatCapacityJPerK: 20,
          insideWPerK: [2, 0.5, 1],
          outsideWPerK: 0.3,
        },
      ],
    },
    { temperatureK: ambientK, refrigerantKg: 0, airKg: (90000 * HOSE_M3) / (AIR_GAS_CONSTANT * ambientK) },
  );
}

function addCan({ network }: Car, id: string, contents: Contents): VesselIndex {
  return network.addVessel(
    {
      id,
      cells: [
        {
          id,
          kind: 'pot',
          volumeM3: CAN_M3,
          wallHeatCapacityJPerK: 45,
          insideWPerK: [4, 1, 2.5],
          outsideWPerK: 0.45,
        },
      ],
    },
    contents,
  );
}
