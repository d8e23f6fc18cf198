/** `check FILE...`: scenario files checked, one finding a line; a warning alone is no failure. */
import { checkScenario } from '../../scoring/checkScenario';
import { rubrics } from '../../session/scenario/rubrics';
import { word } from '../../words/words';
import { defineVerb } from '../verb';

export default defineVerb({
  name: 'check',
  summary: 'verbs.check.summary',
  options: { json: { kind: 'flag', summary: 'cli.json' } },
  operands: [{ name: 'FILE', required: true, many: true }],
  run({ options, operands }, io) {
    const problems = operands.flatMap((file) => {
      const found = checkScenario(file, io.readFile(file), rubrics);
      if (found.length === 0) io.note(word('verbs.check.clean', { file }));
      return found;
    });
    if (options.json) io.json(problems);
    else for (const { at, code, message } of problems) io.text(`${at} ${code} ${message}\n`);
    return problems.some(({ level }) => level === 'error') ? 1 : 0;
  },
});
