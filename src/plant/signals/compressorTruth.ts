/** The truth of the compressor and what turns it: damage by cause and what leads up to it, temperatures, stroke, slip. */

import { compressorOilKg } from '../../loop/car/compressorOilKg';
import { WEAR_CAUSES, WEAR_OF, wearOf } from '../../loop/car/compressorWear';
import { hasClutch } from '../../loop/car/coolingAsked';
import type { PlantParts } from '../assemblePlant';
import { type Signal, signal } from './signal';

export function compressorTruth({ car }: PlantParts): Signal[] {
  const { network, loop } = car;
  const truth = (id: string, unit: string, read: () => number): Signal => signal(id, unit, 'truth', read);
  return [
    truth('compressor.wearRatio', '1', () => wearOf(network.reserve)),
    ...WEAR_CAUSES.map((cause) =>
      truth(`compressor.wear.${cause}Ratio`, '1', () => car.number(WEAR_OF[cause])),
    ),
    truth('compressor.seized', 'bool', () => (wearOf(network.reserve) >= 1 ? 1 : 0)),
    truth('compressor.sluggedKg', 'kg', () => car.number('sluggedKg')),
    truth('compressor.slugKg', 'kg', () => car.number('slugKg')),
    truth('compressor.vacuumS', 's', () => car.number('vacuumS')),
    truth('compressor.dryS', 's', () => car.number('dryS')),
    truth('compressor.oilKg', 'kg', () => compressorOilKg(network, loop)),
    truth('compressor.bodyTemperatureK', 'K', () =>
      network.wallTemperatureK(loop.low, network.cellCount(loop.low) - 1),
    ),
    truth('compressor.dischargeTemperatureK', 'K', () => network.temperatureK(loop.high, 0)),
    truth('compressor.revPerS', '1/s', () => car.number('compressorRevPerS')),
    truth('compressor.strokeRatio', '1', () => car.number('strokeShare')),
    ...(hasClutch(car.vehicle)
      ? [
          truth('clutch.slipRatio', '1', () => car.number('clutchSlip')),
          truth('clutch.faceTemperatureK', 'K', () => car.number('clutchFaceK')),
        ]
      : []),
  ];
}
