/**
 * `check FILE...`: scenario files checked, with what tells them in other languages (FOLDER/LANGUAGE/NAME beside
 * FOLDER/NAME), one finding a line; a warning alone is no failure.
 */
import { type CheckStage, checkScenario } from '../../scoring/checkScenario';
import { checkTranslation } from '../../scoring/checkTranslation';
import { rubrics } from '../../session/scenario/rubrics';
import { languages, type WordId, word } from '../../words/words';
import type { Io } from '../io';
import { defineVerb, UsageError } from '../verb';

export default defineVerb({
  name: 'check',
  summary: 'verbs.check.summary',
  options: { json: { kind: 'flag', summary: 'cli.json' } },
  operands: [{ name: 'FILE', required: true, many: true }],
  run({ options, operands }, io) {
    const problems = operands.flatMap((file) => {
      const text = io.readFile(file);
      const tell = (stage: CheckStage) => io.note(word(STAGES[stage], { file }));
      const found = [...checkScenario(file, text, rubrics, tell), ...translations(file, text, io)];
      if (found.length === 0) io.note(word('verbs.check.clean', { file }));
      return found;
    });
    if (options.json) io.json(problems);
    else for (const { at, code, message } of problems) io.text(`${at} ${code} ${message}\n`);
    return problems.some(({ level }) => level === 'error') ? 1 : 0;
  },
});

const STAGES = {
  physics: 'verbs.check.physics',
  solution: 'verbs.check.solution',
  careless: 'verbs.check.careless',
  nothing: 'verbs.check.nothing',
} as const satisfies Readonly<Record<CheckStage, WordId>>;

function translations(file: string, text: string, io: Io) {
  const cut = file.lastIndexOf('/') + 1;
  return languages().flatMap((language) => {
    const beside = `${file.slice(0, cut)}${language}/${file.slice(cut)}`;
    const told = readIfThere(beside, io);
    return told === null ? [] : checkTranslation(beside, told, text);
  });
}

function readIfThere(file: string, io: Io): string | null {
  try {
    return io.readFile(file);
  } catch (error) {
    if (error instanceof UsageError) return null;
    throw error;
  }
}
