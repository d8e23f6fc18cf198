/** Rubrics that are used and rules that are dropped, against those there are; all of them at once. */
import type { Rubric } from '../../shared/schema/rubric';
import type { ScenarioData } from '../../shared/schema/scenario';
import type { Findings } from '../session/check/findings';
import { word } from '../words/words';

export function checkRubric(
  { rubric }: ScenarioData,
  rubrics: ReadonlyMap<string, Rubric>,
  findings: Findings,
): void {
  const known = [...rubrics.keys()];
  rubric.use.forEach((id, at) => {
    if (!rubrics.has(id))
      findings.unknown(['rubric', 'use', at], 'SCN101', word('check.noRubric', { id }), id, known);
    if (rubric.use.indexOf(id) < at)
      findings.error(['rubric', 'use', at], 'SCN122', word('check.onceOnly', { id }));
  });
  const rules = rubric.use.flatMap((id) => rubrics.get(id)?.rules.map((rule) => rule.id) ?? []);
  const isWhole = rubric.use.every((id) => rubrics.has(id));
  (rubric.drop ?? []).forEach((id, at) => {
    if (isWhole && !rules.includes(id))
      findings.unknown(['rubric', 'drop', at], 'SCN101', word('check.noRule', { id }), id, rules);
  });
}
