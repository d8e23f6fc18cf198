/** What a person reads of a scenario, as its own file says it. */
import type { ScenarioData } from './scenario.ts';
import type { ScenarioWords } from './scenarioWords.ts';

export function ownWords(data: ScenarioData): ScenarioWords {
  return {
    title: data.title,
    complaint: data.complaint,
    owner: { ...data.owner },
    papers: Object.fromEntries(data.papers.map(({ id, title, lines }) => [id, { title, lines }])),
    deliver: Object.fromEntries(data.deliver.map(({ id, text }) => [id, text])),
    hints: data.hints,
    debrief: data.debrief,
  };
}
