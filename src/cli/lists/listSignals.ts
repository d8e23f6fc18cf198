/** Signals and measures: the closed lists that rules and watches may name, over all vehicles with a full bench. */
import { vehicleIds } from '../../loop/car/vehicles';
import type { SignalSpec } from '../../plant/signalTypes';
import { eventIds } from '../../session/conditions/eventIds';
import { measureList } from '../../session/record/measures';
import { sessionSignals } from '../../session/sessionSignals';
import { fullPlant } from './fullPlant';

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
  const plant = fullPlant(vehicleId);
  return [...plant.signals, ...sessionSignals(plant)];
}
