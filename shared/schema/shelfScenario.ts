/**
 * What a page holds of a scenario before its session is opened: what shelf, job card and papers go by; their sentences come
 * in the page's language (scenarioWords.ts). What is in the car, what it was found with, what is wrong, what counts and how
 * it is done are not there, so a page does not hold the answer.
 */
import type { ScenarioData } from './scenario.ts';

export function shelfScenario(whole: ScenarioData) {
  const { id, language, level, minutes, jurisdiction, person, vehicle, weather } = whole;
  const { place, papers, found, bench, contents, deliver } = whole;
  return {
    ...{ id, language, level, minutes, jurisdiction, person, vehicle, weather },
    place,
    found: { label: found?.label, heater: found?.heater },
    papers: papers.map(({ id }) => id),
    deliver: deliver.map(({ id }) => id),
    /** Cans are printed with what the bench fills, which is the car's own where nothing is said. */
    bench: { refrigerant: bench.refrigerant ?? contents.refrigerant, tools: bench.tools ?? [] },
  };
}

export type ShelfScenario = ReturnType<typeof shelfScenario>;
