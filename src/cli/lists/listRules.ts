/** Rules by rubric and, where a scenario has its own, by scenario. */
import type { Rule } from '../../../shared/schema/rubric';
import { scenarios } from '../../session/scenario/library';
import { rubrics } from '../../session/scenario/rubrics';

const FORMS = ['never', 'done', 'before', 'while', 'outcome'] as const;

function entry(from: string, rule: Rule) {
  const { id, domain, points, severity, references, tasks = [] } = rule;
  return { id, from, form: FORMS.find((form) => form in rule), domain, points, severity, references, tasks };
}

export const listRules = () => [
  ...[...rubrics.values()].flatMap((rubric) => rubric.rules.map((rule) => entry(rubric.id, rule))),
  ...scenarios.flatMap(({ data }) => (data.rubric.add ?? []).map((rule) => entry(data.id, rule))),
];
