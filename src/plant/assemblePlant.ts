/** The parts of a plant, joined: car and its ports, hoses and cans as vessels, panel, desk, faults. */
import { fittingOf } from '../equipment/fittings';
import { type HoseId, hoseFor } from '../equipment/hoses';
import type { ToolId } from '../equipment/tools';
import { type Filling, purely } from '../faults/fault';
import { type LeakPlace, leakPlaces } from '../faults/leakPlaces';
import type { Layout, Port as LayoutPort } from '../layout/layout';
import { layoutOf } from '../layout/layouts';
import type { Car } from '../loop/car/car';
import { createCar } from '../loop/car/createCar';
import { vehicleOf } from '../loop/car/vehicles';
import type { ForeignId } from '../loop/foreign';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import { addCan, addHose } from './benchVessels';
import type { PlantOptions } from './buildPlant';
import { type Desk, emptyCan, emptyHose } from './desk';
import { type FaultBook, openFaultBook } from './faultBook';
import { foundPorts } from './foundPorts';
import { foundTasks } from './foundTasks';
import { freshHazards } from './hazardDesk';
import { foundStains } from './oilStains';
import { makePanel, type Panel } from './panel';
import type { RigCan, RigHose, RigPort } from './rig';
import { freshSearch } from './searchDesk';
import { freshService } from './serviceDesk';
import { TALLY_COUNT } from './tally';
import { freshTasks } from './taskDesk';
import { addTools, type ToolVessels } from './toolVessels';
import { openVentBook, type VentBook } from './venting';

/** What a vacuum pump leaves in a loop: traces, at about 500 micron (67 Pa). */
const EVACUATED_KG = 1.5e-5;

export interface PlantParts {
  readonly options: PlantOptions;
  readonly car: Car;
  readonly layout: Layout;
  readonly ports: ReadonlyMap<string, RigPort>;
  readonly hoses: ReadonlyMap<HoseId, RigHose>;
  readonly cans: ReadonlyMap<string, RigCan>;
  readonly toolVessels: ToolVessels;
  /** What its cans, its tank and its hoses are for. */
  readonly onBench: RefrigerantId;
  /** What is mixed with the loop's own refrigerant, if anything. */
  readonly foreign: ForeignId | null;
  readonly panel: Panel;
  readonly faults: FaultBook;
  readonly tally: Float64Array;
  /** Where the loop can leak, be searched and be undone. */
  readonly places: readonly LeakPlace[];
  readonly vents: VentBook;
  readonly desk: Desk;
}

/** `errorSeed`: what the errors of the instruments are drawn by; null for none. */
export function assemblePlant(options: PlantOptions, errorSeed: number | null = options.seed): PlantParts {
  const vehicle = vehicleOf(options.vehicleId);
  const layout = layoutOf(options.vehicleId);
  const { weather } = options;
  const evacuated = options.start === 'evacuated';
  const faults = openFaultBook(vehicle, layout, options.faults);
  const filling = asBenchSees(faults.filling(purely(options.refrigerant, options.chargeKg)), options);
  const car = createCar(vehicle, {
    ...filling,
    ...(evacuated ? { chargeKg: EVACUATED_KG, airKg: 0 } : {}),
    ambientK: weather.temperatureK,
    relativeHumidity: weather.relativeHumidity,
    ambientPressurePa: weather.pressurePa,
    stood: options.start === 'soaked' ? 'soaked' : 'equalised',
  });
  // where the loop holds something else, what the bench has is the foreign one
  const onBench = options.bench.refrigerant ?? options.refrigerant;
  const stranger = filling.refrigerant === onBench ? null : onBench;
  if (stranger) car.network.setForeign(stranger);
  // it has been round with the oil: half of it on each side [guess]
  for (const side of [car.loop.low, car.loop.high])
    if (options.foundSealerKg) car.network.bringIn(side, 'sealant', options.foundSealerKg / 2);
  const hoses = new Map<HoseId, RigHose>();
  for (const id of hosesOf(options)) {
    const spec = hoseFor(id, onBench);
    hoses.set(id, { spec, vessel: addHose(car.network, spec, weather) });
  }
  const cans = new Map<string, RigCan>();
  for (const spec of options.bench.cans)
    cans.set(spec.id, { spec, vessel: addCan(car.network, spec, weather, stranger !== null) });
  const tools = options.bench.tools ?? [];
  const tally = new Float64Array(TALLY_COUNT);
  const foreign = car.network.foreign();
  const parts: PlantParts = {
    options,
    onBench,
    car,
    layout,
    ports: new Map(layout.ports.map((port) => [port.id, rigPort(port, car)])),
    hoses,
    cans,
    toolVessels: addTools(car.network, tools, weather, stranger !== null, options.bench.tankHeldKg),
    foreign,
    panel: makePanel(errorSeed),
    faults,
    tally,
    places: leakPlaces(car),
    vents: openVentBook({ car, tally, foreign }),
    desk: freshDesk(layout, [...hoses.keys()], [...cans.keys()], tools, options.heaterOn === true),
  };
  foundPorts(parts);
  foundTasks(parts);
  foundStains(parts);
  return parts;
}

/**
 * A car that is to get another refrigerant than it holds: what the bench has is the network's own fluid, what the car holds
 * the foreign one, all of it. So a conversion ends on the tables of what went in; before it, only pressures are the old
 * one's own (`foreignFactor`).
 */
function asBenchSees(filling: Filling, { bench, refrigerant }: PlantOptions): Filling {
  const other = bench.refrigerant ?? refrigerant;
  if (other === refrigerant) return filling;
  if (filling.foreign || filling.refrigerant !== refrigerant)
    throw new RangeError(`a third refrigerant beside ${refrigerant} in the car and ${other} on the bench`);
  return { ...filling, refrigerant: other, foreign: { fluid: refrigerant, share: 1 } };
}

function hosesOf(options: PlantOptions): HoseId[] {
  const ids: HoseId[] = [];
  if (options.bench.hoses.includes('charging')) ids.push('charging');
  if (options.bench.hoses.includes('gauge-set')) ids.push('gauge-low', 'gauge-high', 'utility');
  return ids;
}

/** Low or high follows from the vessel a port sits on, nothing else. */
function rigPort(port: LayoutPort, car: Car): RigPort {
  const at = car.port(port.id);
  const side = at.vessel === car.loop.low ? 'low' : 'high';
  return { id: port.id, fitting: fittingOf(car.vehicle.label.refrigerant, side), at, side };
}

function freshDesk(
  layout: Layout,
  hoses: readonly HoseId[],
  cans: readonly string[],
  tools: readonly ToolId[],
  heaterOn: boolean,
): Desk {
  return {
    worn: { goggles: false, gloves: false, overall: false },
    doorOpen: false,
    engineRpm: 0,
    acOn: false,
    blower: 0,
    windowsOpen: false,
    recirculated: false,
    caps: Object.fromEntries(layout.ports.map(({ id }) => [id, true])),
    capLetters: {},
    covers: {},
    refitted: [],
    hoses: Object.fromEntries(hoses.map((id) => [id, emptyHose()])),
    manifold: { low: 0, high: 0 },
    cans: Object.fromEntries(cans.map((id) => [id, emptyCan()])),
    probes: { air: null, line: null },
    trims: { charging: 0, low: 0, high: 0 },
    traced: [],
    judged: {},
    sheetsRead: [],
    replaced: [],
    canOpenTo: [],
    service: freshService(tools),
    search: freshSearch(),
    tasks: freshTasks('coldest'),
    hazards: freshHazards(heaterOn),
  };
}
