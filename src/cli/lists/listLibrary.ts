/** What ships for scenarios to use: rubrics, papers, tasks that are rehearsed. */
import { scenarios } from '../../session/scenario/library';
import { rubrics } from '../../session/scenario/rubrics';
import { listRules } from './listRules';

export const listRubrics = () =>
  [...rubrics.values()].map(({ id, rules }) => ({
    id,
    rules: rules.map((rule) => rule.id),
    usedBy: scenarios.filter(({ data }) => data.rubric.use.includes(id)).map(({ data }) => data.id),
  }));

/** `label` and `service` belong to the car and are always there. */
export const listPapers = () => [
  ...['label', 'service'].map((id) => ({ id, scenario: null, title: null, lines: null })),
  ...scenarios.flatMap(({ data }) =>
    data.papers.map(({ id, title, lines }) => ({ id, scenario: data.id, title, lines: lines.length })),
  ),
];

/** Ids of what is rehearsed, with the rules and scenarios that do. */
export function listTasks() {
  const rules = listRules();
  const ids = [...rules.flatMap(({ tasks }) => tasks), ...scenarios.flatMap(({ data }) => data.tasks)];
  return [...new Set(ids)].sort().map((id) => ({
    id,
    rules: [...new Set(rules.filter(({ tasks }) => tasks.includes(id)).map((rule) => rule.id))],
    scenarios: scenarios.filter(({ data }) => data.tasks.includes(id)).map(({ data }) => data.id),
  }));
}
