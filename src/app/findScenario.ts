/** The scenario that an id of the page stands for: one that ships, or one of one's own that is kept here. */
import { loadLayout } from '../layout/layouts';
import { loadVehicle } from '../loop/car/vehicles';
import { fetchScenario } from '../session/scenario/fetchScenario';
import { rubrics } from '../session/scenario/rubrics';
import { type Scenario, scenarioOf } from '../session/scenario/scenario';
import { hashOfOwn } from './ownId';

/** Undefined where there is none. */
export async function findScenario(id: string): Promise<Scenario | undefined> {
  const hash = hashOfOwn(id);
  if (hash === null) return fetchScenario(id);
  const data = await (await import('./ownStore')).wholeOwn(hash);
  if (!data) return undefined;
  await Promise.all([loadVehicle(data.vehicle), loadLayout(data.vehicle)]);
  const scenario = scenarioOf(data, rubrics);
  return scenario.hash === hash ? scenario : undefined;
}
