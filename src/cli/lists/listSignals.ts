/** Signals and measures: the closed lists that rules and watches may name, over all vehicles with a full bench. */
import { TOOL_IDS } from '../../equipment/tools';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { buildPlant } from '../../plant/buildPlant';
import type { SignalSpec } from '../../plant/signalTypes';
import { eventIds } from '../../session/conditions/eventIds';
import { measureList } from '../../session/record/measures';
import { sessionSignals } from '../../session/sessionSignals';

export function listSignals() {
  const found = new Map<string, SignalSpec & { vehicles: string[] }>();
  for (const vehicle of vehicleIds) {
    for (const { id, unit, kind } of signalsOf(vehicle)) {
      const known = found.get(id);
      if (known) known.vehicles.push(vehicle);
      else found.set(id, { id, unit, kind, vehicles: [vehicle] });
    }
  }
  return [
    ...found.values(),
    ...measureList.map(({ id, unit }) => ({ id, unit, kind: 'measure' })),
    ...eventIds.map((id) => ({ id, unit: 'event', kind: 'event' })),
  ];
}

function signalsOf(vehicleId: string): readonly SignalSpec[] {
  const { refrigerant, charge } = vehicleOf(vehicleId).label;
  const plant = buildPlant({
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
  return [...plant.signals, ...sessionSignals(plant)];
}
