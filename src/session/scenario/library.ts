/** All scenarios that ship, checked when the project was built: for the command line and tests; a page fetches one. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { nearest } from '../../words/nearest';
import { rubrics } from './rubrics';
import { type Scenario, scenarioOf } from './scenario';

const scenarioFiles = import.meta.glob<ScenarioData>('../../../scenarios/*.yaml', {
  eager: true,
  import: 'default',
});

/** In order of level, then of id. */
export const scenarios: readonly Scenario[] = Object.values(scenarioFiles)
  .map((data) => scenarioOf(data, rubrics))
  .sort((a, b) => a.data.level - b.data.level || (a.data.id < b.data.id ? -1 : 1));

/** Throws `RangeError` that names the nearest one. */
export function scenarioById(id: string): Scenario {
  const found = scenarios.find(({ data }) => data.id === id);
  if (found) return found;
  const ids = scenarios.map(({ data }) => data.id);
  const near = nearest(id, ids);
  throw new RangeError(
    `no scenario "${id}"; ${near === undefined ? `there are ${ids.join(', ')}` : `did you mean "${near}"?`}`,
  );
}
