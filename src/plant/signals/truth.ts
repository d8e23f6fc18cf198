/**
 * What only the model knows: masses, pressures of the sides, state points. Never leaves the core in an assessed session.
 * State points are of what flows, not of what lies there: 1 is what the compressor draws out of its pot, 2 the gas behind
 * it, 3 what the metering device draws; 4 has the enthalpy of 3, because throttling changes none, as long as anything
 * flows.
 */

import { partNamed } from '../../loop/car/assembleLoop';
import { readCar } from '../../loop/car/carReadings';
import type { PlantParts } from '../assemblePlant';
import { dueNow } from '../due';
import { cyclesPerMinute } from '../keepTally';
import { TALLY } from '../tally';
import { ventedKg } from '../ventedKg';
import { flag, type Signal, signal } from './signal';

export function truthSignals(parts: PlantParts): Signal[] {
  const { car, tally, options, cans } = parts;
  const { network, loop } = car;
  const atmospherePa = options.weather.pressurePa;
  const truth = (id: string, unit: string, read: () => number): Signal => signal(id, unit, 'truth', read);
  return [
    truth('loop.massKg', 'kg', () => network.chargeKg(loop.high) + network.chargeKg(loop.low)),
    truth('loop.beenEmpty', 'bool', () => (parts.desk.tasks.wasEmpty ? 1 : 0)),
    flag('loop.leaking', 'truth', () => parts.faults.leaks()),
    truth('label.massKg', 'kg', () => dueNow(car.vehicle, parts.desk).chargeKg),
    truth('lowSide.pressurePa', 'Pa', () => network.pressurePa(loop.low)),
    truth('highSide.pressurePa', 'Pa', () => network.pressurePa(loop.high)),
    truth('lowSide.gaugePressurePa', 'Pa', () => network.pressurePa(loop.low) - atmospherePa),
    truth('highSide.gaugePressurePa', 'Pa', () => network.pressurePa(loop.high) - atmospherePa),
    ...statePoints(parts),
    truth('superheatK', 'K', () => readCar(car).superheatK),
    truth('subcoolingK', 'K', () => readCar(car).subcoolingK),
    truth('vent.temperatureK', 'K', () => car.number('ventK')),
    truth('outside.temperatureK', 'K', () => car.number('ambientK')),
    truth('cabin.temperatureK', 'K', () => car.number('cabinK')),
    truth('compressor.massFlowKgPerS', 'kg/s', () => network.massFlowKgPerS(loop.compressor)),
    truth('metering.massFlowKgPerS', 'kg/s', () => network.massFlowKgPerS(loop.metering)),
    ...(loop.rearMetering < 0
      ? []
      : [truth('rearMetering.massFlowKgPerS', 'kg/s', () => network.massFlowKgPerS(loop.rearMetering))]),
    truth('capacityW', 'W', () => readCar(car).capacityW),
    truth('condenserW', 'W', () => car.number('condenserHeatW')),
    truth('compressorW', 'W', () => readCar(car).compressorW),
    truth('compressor.liquidKg', 'kg', () => network.linkMemory(loop.compressor, 0)),
    truth('vented.kg', 'kg', () => ventedKg(network)),
    truth('cans.netIntoLoopKg', 'kg', () => tally[TALLY.intoLoopKg]),
    truth('highSide.maxGaugePressurePa', 'Pa', () => tally[TALLY.highestGaugePa]),
    truth('highPressureTrips', '1', () => tally[TALLY.trips]),
    truth('clutch.cyclesPerMin', '1/min', () => cyclesPerMinute(tally)),
    ...[...cans].map(([id, { vessel }]) => truth(`can.${id}.netKg`, 'kg', () => network.chargeKg(vessel))),
    ...vesselMasses(parts),
    ...coilCells(parts),
  ];
}

/** Less than this is no flow, kg/s. */
const FLOWS_KG_PER_S = 1e-5;

function statePoints({ car }: PlantParts): Signal[] {
  const { network, loop, vehicle } = car;
  const coil = partNamed(loop.parts, 'evaporator');
  const liquid = partNamed(loop.parts, 'liquid');
  const [lowEnd, liquidEnd] = [network.cellCount(loop.low) - 1, liquid.firstCell + liquid.cells - 1];
  const drawn = vehicle.lowSide.parts.at(-1)?.outletHeight ?? 'top';
  const metered = (): number =>
    network.portEnthalpyJPerKg({ vessel: loop.high, cell: liquidEnd, height: 'bulk' });
  const flows = (): boolean => network.massFlowKgPerS(loop.metering) > FLOWS_KG_PER_S;
  const places: readonly (readonly [number, number, () => number])[] = [
    [loop.low, lowEnd, () => network.portEnthalpyJPerKg({ vessel: loop.low, cell: lowEnd, height: drawn })],
    [loop.high, 0, () => network.enthalpyJPerKg(loop.high, 0)],
    [loop.high, liquidEnd, metered],
    [
      loop.low,
      coil.firstCell,
      () => (flows() ? metered() : network.enthalpyJPerKg(loop.low, coil.firstCell)),
    ],
  ];
  return places.flatMap(([vessel, cell, enthalpyJPerKg], index) => {
    const id = `point${index + 1}`;
    return [
      signal(`${id}.pressurePa`, 'Pa', 'truth', () => network.pressurePa(vessel)),
      signal(`${id}.enthalpyJPerKg`, 'J/kg', 'truth', enthalpyJPerKg),
      signal(`${id}.temperatureK`, 'K', 'truth', () => network.temperatureK(vessel, cell)),
    ];
  });
}

/** Mass and mean quality of every named stretch of the loop, for the cutaway. */
function vesselMasses({ car }: PlantParts): Signal[] {
  const { network, loop } = car;
  return loop.parts.flatMap(({ part, vessel, firstCell, cells }) => {
    const sum = (of: (cell: number) => number): number => {
      let total = 0;
      for (let cell = firstCell; cell < firstCell + cells; cell++) total += of(cell);
      return total;
    };
    return [
      signal(`vessel.${part}.massKg`, 'kg', 'truth', () => sum((cell) => network.cellMassKg(vessel, cell))),
      signal(
        `vessel.${part}.liquidRatio`,
        '1',
        'truth',
        () => sum((cell) => network.liquidShare(vessel, cell)) / cells,
      ),
      signal(`vessel.${part}.temperatureK`, 'K', 'truth', () =>
        network.temperatureK(vessel, firstCell + cells - 1),
      ),
    ];
  });
}

/** Every cell of a stretch that has more than one, in the order of flow: how much of it is liquid, and how warm it is. */
function coilCells({ car }: PlantParts): Signal[] {
  const { network, loop } = car;
  return loop.parts
    .filter(({ cells }) => cells > 1)
    .flatMap(({ part, vessel, firstCell, cells }) =>
      Array.from({ length: cells }, (_, i) => i).flatMap((i) => {
        const id = `vessel.${part}.cell${i + 1}`;
        return [
          signal(`${id}.liquidRatio`, '1', 'truth', () => network.liquidShare(vessel, firstCell + i)),
          signal(`${id}.temperatureK`, 'K', 'truth', () => network.temperatureK(vessel, firstCell + i)),
        ];
      }),
    );
}
