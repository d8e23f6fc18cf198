/**
 * Everything a scenario says to whoever is assessed in it, as one text in small letters, sentences parted by full stops.
 * Hints are none of it: an assessed session gives none, and the last of them says what to do.
 */
import type { ScenarioData } from '../../../../shared/schema/scenario';

export function visibleWords({ title, complaint, deliver, papers, owner = {} }: ScenarioData): string {
  const said = [
    title,
    complaint,
    ...deliver.map(({ text }) => text),
    ...papers.flatMap((paper) => [paper.title, ...paper.lines]),
    ...Object.values(owner),
  ];
  return said.join('. ').toLowerCase();
}
