/** `replay FILE...`: each saved session run again from its log; does the score it was saved with hold? */

import type { SessionCore } from '../../session/corePort';
import { engineHash } from '../../session/engineHash';
import { BrokenLogError } from '../../session/logProblem';
import { openSession } from '../../session/openSession';
import type { Scenario } from '../../session/scenario/scenario';
import { readSessionFile } from '../../session/sessionFile';
import type { SessionFile } from '../../session/sessionFileText';
import { isWordId, say, word } from '../../words/words';
import type { Io } from '../io';
import { scenarioOfLog } from '../scenarioOfLog';
import { scoredSession } from '../scoredSession';
import { defineVerb, UsageError } from '../verb';

export default defineVerb({
  name: 'replay',
  summary: 'verbs.replay.summary',
  options: {
    scenario: { kind: 'text', example: 'FILE', summary: 'verbs.replay.scenario' },
    weighed: { kind: 'flag', summary: 'verbs.replay.weighed' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  operands: [{ name: 'FILE', required: true, many: true }],
  run({ options, operands }, io) {
    const replayed = operands.map((file) => {
      const saved = read(file, io);
      return { file, ...replay(saved, scenarioOfLog(saved.log, options.scenario, io), options.weighed) };
    });
    io.json(replayed);
    return replayed.every(({ holds }) => holds) ? 0 : 1;
  },
});

function read(file: string, io: Io): SessionFile {
  const text = io.readFile(file);
  try {
    return readSessionFile(text);
  } catch (error) {
    throw new UsageError(word('verbs.replay.badFile', { file, reason: (error as Error).message }));
  }
}

/**
 * A session of another engine or of a changed scenario is told with its stored score and not run. A log with a command
 * that could not have been given does not hold; `broken` says which and why. A score that was weighed is weighed again;
 * `weighed` asks for it where it was not, and then only the hashes can hold.
 */
function replay({ log, last }: SessionFile, scenario: Scenario, weighed: boolean) {
  const sameEngine = log.engineHash === engineHash;
  const sameScenario = log.scenarioHash === scenario.hash;
  const head = { scenario: log.scenarioId, seed: log.seed, mode: log.mode, sameEngine, sameScenario };
  if (!sameEngine || !sameScenario) return { ...head, holds: false, stored: last, now: null };
  let core: SessionCore;
  try {
    core = openSession(scenario, { mode: log.mode, seed: log.seed, log });
  } catch (error) {
    if (!(error instanceof BrokenLogError)) throw error;
    const { number, reason, params } = error;
    const told = isWordId(reason) ? say({ id: reason, values: params }) : reason;
    return { ...head, holds: false, stored: last, now: null, broken: { command: number, reason: told } };
  }
  const { printed } = scoredSession(scenario, core, weighed || last.weighed === true);
  const { score, reported, logHash, stateHash } = printed;
  const isOtherwise = printed.weighed !== (last.weighed === true);
  const holds =
    (isOtherwise || (score === last.score && reported === last.reported)) &&
    logHash === last.logHash &&
    stateHash === last.stateHash;
  return { ...head, holds, stored: last, now: printed };
}
