/** A car with a gauge set and service tools beside it, for tests of service operations. */
import { TOOL_IDS } from '../../src/equipment/tools';
import { assemblePlant, type PlantParts } from '../../src/plant/assemblePlant';
import type { PlantOptions } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import { makeExecutive } from '../../src/plant/executive';
import type { Plant } from '../../src/plant/plantPort';

export interface ServiceBench {
  readonly plant: Plant;
  readonly parts: PlantParts;
  /** Event ids, with their subject behind a colon. Throws where one is refused. */
  give(...commands: Command[]): string[];
  run(seconds: number): string[];
  value(id: string): number;
  /** Both gauge hoses on, couplers and manifold valves open. */
  couple(): void;
}

const LABELS: Readonly<Record<string, number>> = { hatchback: 0.48, sedan: 0.72, pickup: 1.1 };
const LOW: Readonly<Record<string, string>> = { hatchback: 'port-b', sedan: 'port-a', pickup: 'port-a' };
const HIGH: Readonly<Record<string, string>> = { hatchback: 'port-a', sedan: 'port-b', pickup: 'port-b' };
const told = ({ id, subject }: { id: string; subject?: string }): string =>
  subject === undefined ? id : `${id}:${subject}`;

export function serviceBench(
  vehicleId: string,
  degC: number,
  over: Partial<PlantOptions> = {},
): ServiceBench {
  const parts = assemblePlant({
    vehicleId,
    refrigerant: 'R-134a',
    chargeKg: LABELS[vehicleId],
    start: 'equalised',
    weather: { temperatureK: 273.15 + degC, relativeHumidity: 0.5, pressurePa: 101_325 },
    faults: [],
    bench: { hoses: ['gauge-set'], cans: [], tools: TOOL_IDS },
    seed: 1,
    ...over,
  });
  const plant = makeExecutive(parts);
  const give = (...commands: Command[]): string[] =>
    commands.flatMap((command) => {
      const outcome = plant.apply(command);
      if (!outcome.ok) throw new Error(`${command.do}: ${outcome.reason}`);
      return outcome.events.map(told);
    });
  return {
    plant,
    parts,
    give,
    run(seconds) {
      const events: string[] = [];
      for (let i = 0; i < seconds * 50; i++) events.push(...plant.advance().map(told));
      return events;
    },
    value: (id) => plant.value(plant.signalIndex(id)),
    couple() {
      const [low, high] = [LOW[vehicleId], HIGH[vehicleId]];
      give(
        { do: 'cap', port: low, to: 'off' },
        { do: 'cap', port: high, to: 'off' },
        { do: 'couple', hose: 'gauge-low', port: low, route: '' },
        { do: 'couple', hose: 'gauge-high', port: high, route: '' },
        { do: 'coupler', hose: 'gauge-low', to: 'open' },
        { do: 'coupler', hose: 'gauge-high', to: 'open' },
        { do: 'manifold', side: 'low', turn: 16 },
        { do: 'manifold', side: 'high', turn: 16 },
      );
    },
  };
}
