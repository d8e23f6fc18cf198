/** Makes the session core of a request, with the saturation line of what is in the car. */
import type { SaturationLine } from '../instruments/saturation';
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
  await loadRefrigerant(scenario.data.contents.refrigerant);
  const core = openSession(scenario, { mode, seed, ...(log ? { log } : {}) });
  return { core, saturation: saturationOf(scenario.data.contents.refrigerant) };
}
