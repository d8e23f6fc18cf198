/** Makes the session core of a request, with the saturation line of what is in the car. */
import type { SaturationLine } from '../instruments/saturation';
import type { SessionCore } from '../session/corePort';
import { openSession } from '../session/openSession';
import { scenarioById } from '../session/scenario/library';
import type { OpenRequest } from './protocol';
import { saturationOf } from './saturationOf';

export interface OpenedCore {
  readonly core: SessionCore;
  readonly saturation: SaturationLine;
}

export function openCore({ scenarioId, mode, seed, log }: OpenRequest): OpenedCore {
  const scenario = scenarioById(scenarioId);
  const core = openSession(scenario, { mode, seed, ...(log ? { log } : {}) });
  return { core, saturation: saturationOf(scenario.data.contents.refrigerant) };
}
