/** Makes the session core of a request, with the saturation line of what is in the car. */
import type { SaturationLine } from '../instruments/saturation';
import { refrigerantsOf } from '../loop/car/refrigerantsOf';
import { vehicleOf } from '../loop/car/vehicles';
import { loadRefrigerant } from '../refrigerant/fluids';
import type { SessionCore } from '../session/corePort';
import { openSession } from '../session/openSession';
import { scenarioById } from '../session/scenario/library';
import type { OpenRequest } from './protocol';
import { saturationOf } from './saturationOf';

export interface OpenedCore {
  readonly core: SessionCore;
  readonly saturation: SaturationLine;
}

export async function openCore({ scenarioId, mode, seed, log }: OpenRequest): Promise<OpenedCore> {
  const scenario = scenarioById(scenarioId);
  const needed = refrigerantsOf(vehicleOf(scenario.data.vehicle), scenario.data.contents.refrigerant);
  await Promise.all(needed.map(loadRefrigerant));
  const core = openSession(scenario, { mode, seed, ...(log ? { log } : {}) });
  return { core, saturation: saturationOf(scenario.data.contents.refrigerant) };
}
