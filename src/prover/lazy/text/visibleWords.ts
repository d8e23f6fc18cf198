/** Everything a scenario says to whoever plays it, as one text in small letters, sentences parted by full stops. */
import type { ScenarioData } from '../../../../shared/schema/scenario';

export function visibleWords({ title, complaint, deliver, papers, owner = {}, hints }: ScenarioData): string {
  const said = [
    title,
    complaint,
    ...deliver.map(({ text }) => text),
    ...papers.flatMap((paper) => [paper.title, ...paper.lines]),
    ...Object.values(owner),
    ...hints,
  ];
  return said.join('. ').toLowerCase();
}
