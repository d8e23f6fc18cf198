/** A debrief in the page's language: what the scenario says at its end, and the rules of its place. */
import type { Place } from '../../shared/schema/persons';
import type { DebriefData, DebriefFinding } from '../panels/debriefModel';
import { actOf } from '../session/law/ruleOfPlace';
import { lawTold } from '../words/lawTold';
import { toldAfter } from './told';

export async function toldDebrief(
  debrief: DebriefData,
  scenarioId: string,
  place: Place,
): Promise<DebriefData> {
  const text = (await toldAfter(scenarioId)) ?? debrief.debriefText;
  const inWords = (finding: DebriefFinding): DebriefFinding => {
    const act = actOf(finding.rule);
    const told = act && lawTold(place, act);
    return finding.law && told ? { ...finding, law: { ...finding.law, ...told } } : finding;
  };
  return { ...debrief, debriefText: text, findings: debrief.findings.map(inWords) };
}
