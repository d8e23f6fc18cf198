/** A sound car of one kind with everything on its bench, for lists of what there is. */
import { TOOL_IDS } from '../../equipment/tools';
import { vehicleOf } from '../../loop/car/vehicles';
import { buildPlant } from '../../plant/buildPlant';
import type { Plant } from '../../plant/plantPort';

export function fullPlant(vehicleId: string): Plant {
  const { refrigerant, charge } = vehicleOf(vehicleId).label;
  return buildPlant({
    vehicleId,
    refrigerant,
    chargeKg: charge,
    start: 'equalised',
    weather: { temperatureK: 300, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: {
      hoses: ['charging', 'gauge-set'],
      cans: [{ id: 'can-1', netKg: 0.3, printedTotalKg: 0.34, tareKg: 0.1 }],
      tools: TOOL_IDS,
    },
    seed: 1,
  });
}
