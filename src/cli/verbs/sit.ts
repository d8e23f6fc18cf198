/** `sit SCENARIO`: the bay in words. One action a line in, what a person would see out; the score after hand-over. */
import { clockTime } from '../../scoring/sayFinding';
import type { Scenario } from '../../session/scenario/scenario';
import { type Sitting, sitDown } from '../../twin/sit';
import { word } from '../../words/words';
import type { Io } from '../io';
import { modeOption, scenarioArgument, seedOption } from '../scenarioArgument';
import { scoredSession } from '../scoredSession';
import { defineVerb } from '../verb';

export default defineVerb({
  name: 'sit',
  summary: 'twin.sit.summary',
  options: {
    mode: { kind: 'text', example: 'practice', summary: 'twin.sit.mode' },
    seed: { kind: 'text', example: '1', summary: 'twin.sit.seed' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  operands: [{ name: 'SCENARIO', required: true }],
  async run({ options, operands }, io) {
    const scenario = scenarioArgument(operands[0], io);
    const sitting = sitDown(scenario, modeOption(options.mode, 'practice'), seedOption(options.seed));
    const tell = teller(sitting, io, options.json);
    tell(null, true, sitting.greet());
    for await (const line of io.inputLines()) {
      if (line.trim() === '') continue;
      const { lines, taken } = sitting.hear(line);
      tell(line.trim(), taken, lines);
      if (sitting.core.view().phase === 'debrief') {
        tell(null, true, closing(scenario, sitting));
        return 0;
      }
    }
    return 0;
  },
});

function teller({ core }: Sitting, io: Io, asJson: boolean) {
  return (line: string | null, taken: boolean, said: readonly string[]): void => {
    if (asJson) io.line({ step: core.step, line, taken, said });
    else io.text(`${[word('twin.sit.clock', { time: clockTime(core.step) }), ...said].join('\n')}\n`);
  };
}

function closing(scenario: Scenario, { core }: Sitting): string[] {
  if (core.mode === 'explore') return [word('twin.sit.explored')];
  const { printed } = scoredSession(scenario, core);
  const result = printed.passed ? word('twin.sit.passed') : word('twin.sit.notPassed');
  return [
    word('twin.sit.finished', { reported: String(printed.reported), result }),
    ...printed.findings.map(({ sentence }) => sentence),
  ];
}
