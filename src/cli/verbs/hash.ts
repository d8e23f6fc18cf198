/** `hash`: the standard run's state hashes, to be compared with those of another engine. */
import { engineHash } from '../../session/engineHash';
import { standardRun } from '../../session/standardRun';
import { defineVerb } from '../verb';

export default defineVerb({
  name: 'hash',
  summary: 'verbs.hash.summary',
  options: { json: { kind: 'flag', summary: 'cli.json' } },
  run(_call, io) {
    io.json({ engineHash, hashes: standardRun() });
    return 0;
  },
});
