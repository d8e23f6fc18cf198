/** What is found in a text without playing it: the form's values, problems with their places, and the ids it may use. */

import type { IdSet } from '../../plant/commandSpecs';
import { type ReadScenario, readScenario } from '../../scoring/readScenario';
import { checkTeaching } from '../../session/check/checkTeaching';
import { rubrics } from '../../session/scenario/rubrics';
import { sessionSignals } from '../../session/sessionSignals';
import { formOf } from '../edit/formOf';
import type { Choices, Looked } from './protocol';

const SETS: readonly IdSet[] = [
  'port',
  'covered-port',
  'part',
  'hose',
  'can',
  'can-inlet',
  'gauge',
  'air-place',
  'line-place',
  'zone',
  'channel',
  'sheet',
  'cause',
  'replaceable',
  'device',
  'device-place',
  'tank',
  'leak-place',
  'loop-place',
  'cleanable',
];

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
    ...Object.fromEntries(SETS.map((set) => [set, plant.choices(set)])),
    signal: [...plant.signals, ...sessionSignals(plant)].map(({ id }) => id),
    rule: scenario.rules.map(({ id }) => id),
  };
}
