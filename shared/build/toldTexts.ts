/** What is told of scenarios and of the law, in a language: from its own files where it has them, else as it stands. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Jurisdiction } from '../schema/jurisdiction.ts';
import { type LawWords, lawWords, ownLaw } from '../schema/lawWords.ts';
import { ownWords } from '../schema/ownWords.ts';
import { readYaml } from '../schema/readYaml.ts';
import type { ScenarioData } from '../schema/scenario.ts';
import { type ScenarioWords, scenarioWords } from '../schema/scenarioWords.ts';
import { projectFolder } from './folders.ts';
import { idsIn, scenarioIds, textOf } from './languageFiles.ts';
import { validate } from './validate.ts';

const checked = (file: string): unknown => validate(file, readYaml(file, textOf(file)));
const isThere = (file: string): boolean => existsSync(join(projectFolder, file));

/** Throws where a file is wrong. */
export function scenarioTexts(language: string, id: string): ScenarioWords {
  const data = checked(`scenarios/${id}.yaml`) as ScenarioData;
  const file = `scenarios/${language}/${id}.yaml`;
  if (data.language === language || !isThere(file)) return ownWords(data);
  return scenarioWords(readYaml(file, textOf(file)), data);
}

/** What a shelf tells of each scenario. */
export function toldOnShelf(
  language: string,
): Record<string, Pick<ScenarioWords, 'title' | 'complaint' | 'deliver'>> {
  return Object.fromEntries(
    scenarioIds().map((id) => {
      const { title, complaint, deliver } = scenarioTexts(language, id);
      return [id, { title, complaint, deliver }];
    }),
  );
}

/** What a job tells, without its end. */
export function toldOf(language: string, id: string): Pick<ScenarioWords, 'owner' | 'papers' | 'hints'> {
  const { owner, papers, hints } = scenarioTexts(language, id);
  return { owner, papers, hints };
}

export const toldAfter = (language: string, id: string): string => scenarioTexts(language, id).debrief;

/** Rule and source of every act, by place. */
export function lawOf(language: string): Record<string, LawWords> {
  return Object.fromEntries(
    idsIn('shared/jurisdictions').map((place) => {
      const data = checked(`shared/jurisdictions/${place}.yaml`) as Jurisdiction;
      const file = `shared/jurisdictions/${language}/${place}.yaml`;
      return [place, isThere(file) ? lawWords(readYaml(file, textOf(file))) : ownLaw(data)];
    }),
  );
}
