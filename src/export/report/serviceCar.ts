/** A shipped car with the gauge set on both ports and one service tool on the utility hose, for the report's transients. */
import { TOOL_IDS } from '../../equipment/tools';
import { vehicleOf } from '../../loop/car/vehicles';
import { assemblePlant } from '../../plant/assemblePlant';
import type { PlantOptions } from '../../plant/buildPlant';
import type { Command } from '../../plant/commandSpecs';
import { makeExecutive } from '../../plant/executive';
import type { Plant } from '../../plant/plantPort';
import { STEP_S } from '../../plant/stepTime';
import type { Point } from './plot';

const ZERO_C = 273.15;
const SEA_LEVEL_PA = 101_325;

/** Coupled, manifold open, `device` attached and running. Throws where a command is refused. */
export function serviceCar(
  vehicleId: string,
  ambientC: number,
  device: 'recovery-machine' | 'vacuum-pump',
  over: Partial<PlantOptions> = {},
): Plant {
  const { label } = vehicleOf(vehicleId);
  const parts = assemblePlant({
    vehicleId,
    refrigerant: label.refrigerant,
    chargeKg: label.charge,
    start: 'equalised',
    weather: { temperatureK: ambientC + ZERO_C, relativeHumidity: 0.5, pressurePa: SEA_LEVEL_PA },
    faults: [],
    bench: { hoses: ['gauge-set'], cans: [], tools: TOOL_IDS },
    seed: 1,
    ...over,
  });
  const plant = makeExecutive(parts);
  for (const { id, side } of parts.ports.values()) {
    const hose = `gauge-${side}`;
    give(
      plant,
      { do: 'cap', port: id, to: 'off' },
      { do: 'couple', hose, port: id, route: '' },
      { do: 'coupler', hose, to: 'open' },
      { do: 'manifold', side, turn: 16 },
    );
  }
  give(
    plant,
    { do: 'attach', device: 'micron-gauge', onto: 'gauge-low' },
    { do: 'attach', device, onto: 'utility' },
    { do: 'run', device, to: 'on' },
  );
  return plant;
}

export function give(plant: Plant, ...commands: readonly Command[]): void {
  for (const command of commands) {
    const outcome = plant.apply(command);
    if (!outcome.ok) throw new Error(`${command.do}: ${outcome.reason}`);
  }
}

/** A signal every `everyS` seconds from now on, against minutes. */
export function trace(
  plant: Plant,
  signal: string,
  durationS: number,
  everyS: number,
  of: (value: number) => number,
): Point[] {
  const index = plant.signalIndex(signal);
  const steps = Math.round(everyS / STEP_S);
  const points: Point[] = [];
  for (let second = 0; second <= durationS; second += everyS) {
    points.push([second / 60, of(plant.value(index))]);
    for (let i = 0; i < steps; i++) plant.advance();
  }
  return points;
}
