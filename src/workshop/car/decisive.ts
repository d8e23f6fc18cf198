/** What the readings of a scenario's car depend on, as text: a changed title is no reason to run anything again. */
import type { ScenarioData } from '../../../shared/schema/scenario';

export function decisive(data: ScenarioData): string {
  const { vehicle, weather, contents, faults, found, place, bench, varies } = data;
  return JSON.stringify({ vehicle, weather, contents, faults, found, place, bench, varies });
}
