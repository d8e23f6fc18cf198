/** `play SCENARIO`: a plan played without a screen, scored out of the record of its own log. */
import { openRecorded } from '../../session/openRecorded';
import { playPlan } from '../../session/plan/playPlan';
import { sessionFileText } from '../../session/sessionFileText';
import { sayRefusal } from '../../twin/hear';
import { word } from '../../words/words';
import { planArgument } from '../planArgument';
import { modeOption, scenarioArgument, seedOption } from '../scenarioArgument';
import { scoredSession } from '../scoredSession';
import { defineVerb } from '../verb';

const SCORED = ['practice', 'assessed'] as const;

export default defineVerb({
  name: 'play',
  summary: 'verbs.play.summary',
  options: {
    plan: { kind: 'text', required: true, example: 'solution', summary: 'verbs.play.plan' },
    seed: { kind: 'text', example: '1', summary: 'verbs.play.seed' },
    mode: { kind: 'text', example: 'assessed', summary: 'verbs.play.mode' },
    save: { kind: 'text', example: 's.session.json', summary: 'verbs.play.save' },
    weighed: { kind: 'flag', summary: 'verbs.play.weighed' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  operands: [{ name: 'SCENARIO', required: true }],
  run({ options, operands }, io) {
    const scenario = scenarioArgument(operands[0], io);
    const lines = planArgument(scenario, options.plan, io);
    const mode = modeOption(options.mode, 'assessed', SCORED);
    const { core, record } = openRecorded(scenario, mode, seedOption(options.seed));
    for (const { line, reason, params } of playPlan(core, lines)) {
      const told = sayRefusal(reason, params);
      io.note(word('verbs.play.refusedLine', { line: String(line + 1), reason: told }));
    }
    const { printed, file } = scoredSession(scenario, core, options.weighed, record());
    if (options.save !== undefined) io.writeFile(options.save, sessionFileText(file));
    io.json(printed);
    return 0;
  },
});
