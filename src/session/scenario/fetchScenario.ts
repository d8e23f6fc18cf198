/** One shipped scenario and its car, fetched by themselves: a page plays one, so it need not carry the library. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { loadLayout } from '../../layout/layouts';
import { loadVehicle } from '../../loop/car/vehicles';
import { rubrics } from './rubrics';
import { type Scenario, scenarioOf } from './scenario';

const FOLDER = '../../../scenarios';
const files = import.meta.glob<ScenarioData>('../../../scenarios/*.yaml', { import: 'default' });

/** Undefined where none of that id ships; a file has its scenario's id for a name. */
export async function fetchScenario(id: string): Promise<Scenario | undefined> {
  const path = `${FOLDER}/${id}.yaml`;
  const fetched = Object.hasOwn(files, path) ? await files[path]() : undefined;
  if (!fetched) return undefined;
  await Promise.all([loadVehicle(fetched.vehicle), loadLayout(fetched.vehicle)]);
  return scenarioOf(fetched, rubrics);
}
