/** One shipped scenario, fetched by itself: a page plays one, so it need not carry the library. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { rubrics } from './rubrics';
import { type Scenario, scenarioOf } from './scenario';

const FOLDER = '../../../scenarios';
const files = import.meta.glob<ScenarioData>('../../../scenarios/*.yaml', { import: 'default' });

/** Undefined where none of that id ships; a file has its scenario's id for a name. */
export async function fetchScenario(id: string): Promise<Scenario | undefined> {
  const path = `${FOLDER}/${id}.yaml`;
  const fetched = Object.hasOwn(files, path) ? await files[path]() : undefined;
  return fetched && scenarioOf(fetched, rubrics);
}
