/**
 * What the shelf and the job card say of a scenario, from the checked data that ships: the car and its year, but neither
 * its kind of loop nor its gas, which are found on it. Nothing of the engine is loaded for it, so the shelf never waits.
 */
import type { ShelfScenario } from '../../shared/schema/shelfScenario';
import { USUAL_PLACE } from '../equipment/place';
import type { ScenarioFacts } from '../panels/sessionModel';
import { parseQuantity } from '../units/quantity';
import { isWordId, say } from '../words/words';
import { language } from './language';
import { toldOf } from './told';

const scenarioFiles = import.meta.glob<ShelfScenario>('../../scenarios/*.yaml', {
  eager: true,
  query: '?shelf',
  import: 'default',
});

export const scenarioData: readonly ShelfScenario[] = Object.values(scenarioFiles).sort(
  (a, b) => a.level - b.level || (a.id < b.id ? -1 : 1),
);

function vehicleWord(vehicleId: string): string {
  const id = `name.vehicle.${vehicleId}`;
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

const PERCENT = 100;
const SEA_LEVEL_PA = 101_325;

/** In the page's language, as far as its texts are there. */
export function factsOf(data: ShelfScenario): ScenarioFacts {
  const { title, complaint, deliver, owner, hints } = toldOf(data.id);
  return {
    id: data.id,
    title,
    vehicle: vehicleWord(data.vehicle),
    body: BODIES[data.vehicle] ?? 'hatch',
    complaint,
    deliver: data.deliver.map((id) => ({ id, text: deliver[id] })),
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
    hasHeater: data.found.heater !== undefined,
    owner,
    person: data.person,
    country: data.jurisdiction ?? 'check-first',
    hints,
    tools: data.bench.tools,
  };
}

/** The same, made anew when the page's language changes. */
export function factsSpoken(data: ShelfScenario): () => ScenarioFacts {
  let facts = factsOf(data);
  let spoken = language();
  return () => {
    if (spoken !== language()) {
      facts = factsOf(data);
      spoken = language();
    }
    return facts;
  };
}

export const shelfFacts = (): readonly ScenarioFacts[] => scenarioData.map(factsOf);
