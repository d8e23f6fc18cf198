/** What the car's side asks of the page around it. */
import type { ScenarioData } from '../../shared/schema/scenario';
import type { Mode } from '../session/corePort';

export interface CarLinks {
  /** Opens a session of it; false where this browser keeps nothing, so that none can be opened. */
  play(data: ScenarioData, mode: Mode): Promise<boolean>;
}
