/**
 * A ghost car: the scenario's car, weather and bench with one known fault in place of the hidden ones, filled to the label,
 * and instruments without error of their own. It takes the same commands at the same steps as the car in the bay.
 *
 * The label's charge holds for a sound ghost; a fault of the contents acts on it. A loop that starts evacuated starts so
 * here too. A car that was found converted is filled as its conversion says. A command that this ghost would refuse (its
 * hose was not caught, its engine did not stop) leaves it as it is.
 */
import { vehicleOf } from '../loop/car/vehicles';
import { assemblePlant, type PlantParts } from '../plant/assemblePlant';
import type { PlantOptions } from '../plant/buildPlant';
import { type Command, commandSpecs } from '../plant/commandSpecs';
import { dueWith } from '../plant/due';
import { makeExecutive } from '../plant/executive';
import { NOTHING_WRONG } from '../plant/faultBook';
import type { Plant } from '../plant/plantPort';
import type { GhostSpec } from './causes';

export interface Ghost {
  readonly spec: GhostSpec;
  readonly plant: Plant;
  readonly parts: PlantParts;
  /** Steps until `step` are done; never back. */
  runTo(step: number): void;
  perform(command: Command): void;
}

/** Throws `RangeError` as `buildPlant` does. */
export function buildGhost(options: PlantOptions, spec: GhostSpec): Ghost {
  const parts = assemblePlant(withCause(options, spec), null);
  const plant = makeExecutive(parts);
  return {
    spec,
    plant,
    parts,
    runTo(step) {
      for (let toDo = step - plant.step; toDo > 0; toDo--) plant.advance();
    },
    perform(command) {
      if (commandSpecs[command.do].group !== 'session') plant.apply(command);
    },
  };
}

function withCause(options: PlantOptions, spec: GhostSpec): PlantOptions {
  const faults = spec.cause === NOTHING_WRONG ? [] : (spec.both ?? [spec]);
  return {
    ...options,
    chargeKg: dueWith(vehicleOf(options.vehicleId), options.refrigerant).chargeKg,
    faults: faults.map(({ cause, severity }) => ({ id: cause, severity, onsetStep: 0 })),
  };
}
