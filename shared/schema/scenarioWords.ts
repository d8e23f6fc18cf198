/**
 * scenarios/LANGUAGE/ID.yaml: what a person reads of a scenario, in another language, by the keys of the scenario itself.
 * Keys, count of lines and numbers have to be those of the scenario; `author`, `history` and `teacher` may be left
 * out.
 */
import { z } from 'zod';
import { ownWords } from './ownWords.ts';
import type { Problem } from './problem.ts';
import { shapeProblems } from './problems.ts';
import { YamlError, type YamlPath, type YamlSource } from './readYaml.ts';
import { sameFigures } from './sameFigures.ts';
import type { ScenarioData } from './scenario.ts';

export interface ScenarioWords {
  readonly title: string;
  readonly complaint: string;
  /** What the owner answers, by what is asked. */
  readonly owner: Readonly<Record<string, string | undefined>>;
  readonly papers: Readonly<Record<string, { readonly title: string; readonly lines: readonly string[] }>>;
  readonly deliver: Readonly<Record<string, string>>;
  readonly hints: readonly string[];
  readonly debrief: string;
}

const SPOKEN = 1.6;
const text = (most: number) =>
  z
    .string()
    .trim()
    .min(1)
    .max(Math.round(SPOKEN * most));
const WRONG = 'SCN401';
const FIGURES = 'SCN402';

/** Exactly the keys of this scenario. */
function schemaFor(data: ScenarioData) {
  const own = ownWords(data);
  const byKey = (keys: object, value: z.ZodType): z.ZodType =>
    z.strictObject(Object.fromEntries(Object.keys(keys).map((key) => [key, value])));
  const papers = Object.entries(own.papers).map(([id, { lines }]) => [
    id,
    z.strictObject({ title: text(80), lines: z.array(text(240)).length(lines.length) }),
  ]);
  return z.strictObject({
    title: text(60),
    author: text(80).optional(),
    complaint: text(300),
    ...(Object.keys(own.owner).length > 0 ? { owner: byKey(own.owner, text(240)) } : {}),
    ...(papers.length > 0 ? { papers: z.strictObject(Object.fromEntries(papers)) } : {}),
    deliver: byKey(own.deliver, text(160)),
    hints: z.array(text(400)).length(own.hints.length),
    debrief: text(2000),
    history: text(600).optional(),
    teacher: text(3000).optional(),
  });
}

/** What is wrong with a translation of `data`, each with its place. */
export function scenarioWordsProblems(source: YamlSource, data: ScenarioData): Problem[] {
  const wrong = shapeProblems(source, schemaFor(data));
  if (wrong.length > 0) return wrong.map((one) => ({ ...one, code: WRONG }));
  const own = {
    ...ownWords(data),
    author: data.author,
    history: data.contents.history,
    teacher: data.teacher,
  };
  return [...sentencesOf(source.data, [])].flatMap(([path, given]) => {
    const found = sameFigures(String(at(own, path)), given);
    if (found === null) return [];
    return [
      {
        at: source.at(path),
        ...source.placeOf(path),
        code: FIGURES,
        level: 'error',
        message: found,
      } as const,
    ];
  });
}

/** Throws `YamlError` with the first problem. */
export function scenarioWords(source: YamlSource, data: ScenarioData): ScenarioWords {
  const [first] = scenarioWordsProblems(source, data);
  if (first) throw new YamlError(first.at, first.code, first.message);
  const { title, complaint, owner = {}, papers = {}, deliver, hints, debrief } = source.data as ScenarioWords;
  return { title, complaint, owner, papers, deliver, hints, debrief };
}

function* sentencesOf(data: unknown, path: YamlPath): Generator<[YamlPath, string]> {
  if (typeof data === 'string') yield [path, data];
  else if (Array.isArray(data))
    for (const [at, one] of data.entries()) yield* sentencesOf(one, [...path, at]);
  else if (typeof data === 'object' && data !== null)
    for (const [key, one] of Object.entries(data)) yield* sentencesOf(one, [...path, key]);
}

function at(data: unknown, path: YamlPath): unknown {
  return path.reduce((here: unknown, part) => (here as Record<string | number, unknown>)[part], data);
}
