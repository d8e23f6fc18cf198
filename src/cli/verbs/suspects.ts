/** `suspects FILE`: after each reading of a saved session, the posterior by cause and what each cause's ghosts would show. */
import { engineHash } from '../../session/engineHash';
import { recordOf } from '../../session/recordOf';
import { scenarioById } from '../../session/scenario/library';
import { plantOptions } from '../../session/scenario/plantOptions';
import type { Scenario } from '../../session/scenario/scenario';
import { readSessionFile } from '../../session/sessionFile';
import type { SessionFile } from '../../session/sessionFileText';
import { ensembleAt, pairOf } from '../../suspects/causes';
import { type SuspectsAfter, suspectsOf } from '../../suspects/suspects';
import { word } from '../../words/words';
import { scenarioArgument } from '../scenarioArgument';
import { defineVerb, UsageError } from '../verb';

const PRINTED = 1e6;

export default defineVerb({
  name: 'suspects',
  summary: 'suspects.summary',
  options: {
    scenario: { kind: 'text', example: 'FILE', summary: 'verbs.replay.scenario' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  operands: [{ name: 'FILE', required: true }],
  run({ options: { scenario: given }, operands: [file] }, io) {
    const { log } = read(file, io.readFile(file));
    const scenario = given === undefined ? shipped(file, log.scenarioId) : scenarioArgument(given, io);
    if (log.engineHash !== engineHash) throw new UsageError(word('suspects.otherEngine', { file }));
    if (log.scenarioHash !== scenario.hash)
      throw new UsageError(word('suspects.otherScenario', { file, scenario: log.scenarioId }));
    const record = recordOf(scenario, log);
    const options = plantOptions(scenario.data, log.seed);
    const ensemble = [...ensembleAt(options), ...pairOf(scenario.answer.hidden ?? [])];
    const { prior, after } = suspectsOf(record, options, ensemble);
    io.json({
      scenario: log.scenarioId,
      seed: log.seed,
      mode: log.mode,
      prior: rounded(prior),
      readings: after.map(printed),
    });
    return 0;
  },
});

function printed({ seen, ghosts, posterior }: SuspectsAfter) {
  const { step, channel, value, unit, counts } = seen;
  return { step, channel, value, unit, counts, posterior: rounded(posterior), ghosts: rounded(ghosts) };
}

/** To six places: beyond them there is no meaning. */
function rounded(values: Readonly<Record<string, number | null>>) {
  return Object.fromEntries(
    Object.entries(values).map(([id, value]) => [
      id,
      value === null ? null : Math.round(PRINTED * value) / PRINTED,
    ]),
  );
}

function read(file: string, text: string): SessionFile {
  try {
    return readSessionFile(text);
  } catch (error) {
    throw new UsageError(word('verbs.replay.badFile', { file, reason: (error as Error).message }));
  }
}

function shipped(file: string, id: string): Scenario {
  try {
    return scenarioById(id);
  } catch (error) {
    throw new UsageError(word('suspects.badFile', { file, reason: (error as Error).message }));
  }
}
