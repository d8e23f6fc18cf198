/** What is found in a text without playing it: the form's values, problems with their places, and the ids it may use. */

import { ID_SETS } from '../../plant/commandSpecs';
import { type ReadScenario, readScenario } from '../../scoring/readScenario';
import { checkTeaching } from '../../session/check/checkTeaching';
import { rubrics } from '../../session/scenario/rubrics';
import { sessionSignals } from '../../session/sessionSignals';
import { formOf } from '../edit/formOf';
import type { Choices, Looked } from './protocol';

export function lookAt(file: string, text: string): Looked {
  const { problems, formed, ready } = readScenario(file, text, rubrics);
  if (formed) checkTeaching(formed.data, formed.findings);
  return {
    form: formOf(text),
    scenario: ready ? ready.scenario.data : null,
    problems: formed ? formed.findings.list : problems,
    choices: ready ? choicesOf(ready) : null,
  };
}

function choicesOf({ plant, scenario }: NonNullable<ReadScenario['ready']>): Choices {
  return {
    ...Object.fromEntries(ID_SETS.map((set) => [set, plant.choices(set)])),
    signal: [...plant.signals, ...sessionSignals(plant)].map(({ id }) => id),
    rule: scenario.rules.map(({ id }) => id),
  };
}
