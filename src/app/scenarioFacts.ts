/**
 * What the shelf and the job card say of a scenario, from the checked data that ships. Nothing of the engine is loaded
 * for it, so the shelf never waits for the bay.
 */
import type { ScenarioData } from '../../shared/schema/scenario';
import { USUAL_PLACE } from '../equipment/place';
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

/** Where nothing is said, the usual garage. */
function siteOf({ place }: ShelfScenario): ScenarioFacts['site'] {
  if (!place) return USUAL_PLACE;
  const volumeM3 = place.volume ? parseQuantity(place.volume, 'volume') : USUAL_PLACE.volumeM3;
  return { kind: place.kind, volumeM3 };
}

const BODIES: Readonly<Record<string, ScenarioFacts['body']>> = {
  sedan: 'sedan',
  pickup: 'pickup',
  van: 'van',
};

function shelfWord(kind: 'gas' | 'loopShort', vehicleId: string): string {
  const id = `shelf.${kind}.${vehicleId}`;
  return isWordId(id) ? say({ id }) : '';
}

const PERCENT = 100;
const SEA_LEVEL_PA = 101_325;

export function factsOf(data: ShelfScenario): ScenarioFacts {
  return {
    id: data.id,
    title: data.title,
    vehicle: vehicleWord('vehicle', data.vehicle),
    body: BODIES[data.vehicle] ?? 'hatch',
    refrigerant: shelfWord('gas', data.vehicle),
    loopKind: vehicleWord('loop', data.vehicle),
    loopShort: shelfWord('loopShort', data.vehicle),
    complaint: data.complaint,
    deliver: data.deliver.map(({ id, text }) => ({ id, text })),
    level: data.level,
    minutes: data.minutes,
    airTemperatureK: parseQuantity(data.weather.temperature, 'temperature'),
    humidityPercent: parseQuantity(data.weather.humidity, 'ratio') * PERCENT,
    pressurePa: data.weather.pressure
      ? parseQuantity(data.weather.pressure, 'absolutePressure')
      : SEA_LEVEL_PA,
    sunWPerM2: data.weather.sun ? parseQuantity(data.weather.sun, 'irradiance') : 0,
    vehicleId: data.vehicle,
    site: siteOf(data),
    hasHeater: data.found?.heater !== undefined,
    owner: data.owner ?? {},
    person: data.person,
    country: data.jurisdiction ?? 'check-first',
    hints: data.hints,
    tools: data.bench.tools ?? [],
  };
}

export const shelfFacts: readonly ScenarioFacts[] = scenarioData.map(factsOf);
