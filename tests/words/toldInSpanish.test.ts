/** What ships is told in Spanish too: every job and every place, by the same keys and with the same figures. */
import { describe, expect, it } from 'vitest';
import { idsIn, textOf } from '../../shared/build/languageFiles';
import { validate } from '../../shared/build/validate';
import type { Jurisdiction } from '../../shared/schema/jurisdiction';
import { lawWords, ownLaw } from '../../shared/schema/lawWords';
import { ownWords } from '../../shared/schema/ownWords';
import { readYaml } from '../../shared/schema/readYaml';
import { sameFigures } from '../../shared/schema/sameFigures';
import type { ScenarioData } from '../../shared/schema/scenario';
import { scenarioWords, scenarioWordsProblems } from '../../shared/schema/scenarioWords';

const sourceOf = (file: string) => readYaml(file, textOf(file));
const dataOf = (file: string) => validate(file, sourceOf(file));

describe('a job', () => {
  it.each(idsIn('scenarios'))('%s is told whole, with the figures it has in English', (id) => {
    const data = dataOf(`scenarios/${id}.yaml`) as ScenarioData;
    const source = sourceOf(`scenarios/es/${id}.yaml`);
    expect(scenarioWordsProblems(source, data)).toEqual([]);
    expect(scenarioWords(source, data).debrief).not.toBe(ownWords(data).debrief);
  });

  it('is told in Spanish only where it ships', () => {
    expect(idsIn('scenarios/es')).toEqual(idsIn('scenarios'));
  });

  it('is refused with another figure than it has in English', () => {
    const data = dataOf('scenarios/weighed-in.yaml') as ScenarioData;
    const file = 'scenarios/es/weighed-in.yaml';
    const bent = readYaml(file, textOf(file).replace('220 kPa', '230 kPa'));
    expect(scenarioWordsProblems(bent, data).map(({ message }) => message)).toEqual([
      'it lacks {220 kPa}; it has {230 kPa}, which the original has not',
    ]);
  });
});

describe('a place', () => {
  it.each(idsIn('shared/jurisdictions'))('%s has rule and source of every act', (place) => {
    const own = ownLaw(dataOf(`shared/jurisdictions/${place}.yaml`) as Jurisdiction);
    const told = lawWords(sourceOf(`shared/jurisdictions/es/${place}.yaml`));
    for (const [act, { rule, source }] of Object.entries(told)) {
      const english = own[act as keyof typeof own];
      expect(sameFigures(english.rule, rule), `${act}: rule`).toBeNull();
      expect(sameFigures(english.source, source), `${act}: source`).toBeNull();
      expect(source).not.toBe(english.source);
    }
  });
});
