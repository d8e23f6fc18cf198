/**
 * What the shelf and the job card say of a scenario, from the checked data that ships. Nothing of the engine is loaded
 * for it, so the shelf never waits for the bay.
 */
import type { ScenarioData } from '../../shared/schema/scenario';
import type { ScenarioFacts } from '../panels/sessionModel';
import { parseQuantity } from '../units/quantity';
import { isWordId, say } from '../words/words';

/** A scenario as the page knows it: without what only playing and scoring need. */
export type ShelfScenario = Omit<
  ScenarioData,
  'faults' | 'rubric' | 'answer' | 'plans' | 'debrief' | 'teacher' | 'varies' | 'tasks'
>;

const scenarioFiles = import.meta.glob<ShelfScenario>('../../scenarios/*.yaml', {
  eager: true,
  query: '?shelf',
  import: 'default',
});

export const scenarioData: readonly ShelfScenario[] = Object.values(scenarioFiles).sort(
  (a, b) => a.level - b.level || (a.id < b.id ? -1 : 1),
);

function vehicleWord(kind: 'vehicle' | 'loop', vehicleId: string): string {
  const id = `name.${kind}.${vehicleId}`;
  return isWordId(id) ? say({ id }) : vehicleId;
}

const PERCENT = 100;

export function factsOf(data: ShelfScenario): ScenarioFacts {
  return {
    id: data.id,
    title: data.title,
    vehicle: vehicleWord('vehicle', data.vehicle),
    body: data.vehicle === 'sedan' ? 'sedan' : 'hatch',
    loopKind: vehicleWord('loop', data.vehicle),
    complaint: data.complaint,
    deliver: data.deliver.map(({ id, text }) => ({ id, text })),
    level: data.level,
    minutes: data.minutes,
    airTemperatureK: parseQuantity(data.weather.temperature, 'temperature'),
    humidityPercent: parseQuantity(data.weather.humidity, 'ratio') * PERCENT,
    vehicleId: data.vehicle,
    hints: data.hints,
    tools: data.bench.tools ?? [],
  };
}

export const shelfFacts: readonly ScenarioFacts[] = scenarioData.map(factsOf);
