/**
 * What only the model knows: masses, pressures of the sides, state points. Never leaves the core in an assessed session.
 * State points: 1 before the compressor, 2 behind it, 3 before the metering device, 4 behind it.
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
  ];
}

function statePoints({ car }: PlantParts): Signal[] {
  const { network, loop } = car;
  const coil = partNamed(loop.parts, 'evaporator');
  const liquid = partNamed(loop.parts, 'liquid');
  const places = [
    [loop.low, network.cellCount(loop.low) - 1],
    [loop.high, 0],
    [loop.high, liquid.firstCell + liquid.cells - 1],
    [loop.low, coil.firstCell],
  ] as const;
  return places.flatMap(([vessel, cell], index) => {
    const id = `point${index + 1}`;
    return [
      signal(`${id}.pressurePa`, 'Pa', 'truth', () => network.pressurePa(vessel)),
      signal(`${id}.enthalpyJPerKg`, 'J/kg', 'truth', () => network.enthalpyJPerKg(vessel, cell)),
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
