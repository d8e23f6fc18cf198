/** How far a proof is, as notes: not more often than a person can read. */
import { word } from '../../words/words';
import type { Io } from '../io';
import type { Prover } from './proveScenario';

const QUIET_MS = 2_000;

export function progressNotes(io: Io): Pick<Prover, 'onDone'> {
  let said = Date.now();
  return {
    onDone(id, done, known) {
      if (Date.now() - said < QUIET_MS) return;
      said = Date.now();
      const values = { id, done: String(done), known: String(known.of) };
      io.note(known.isMost ? word('prove.verb.progressUpTo', values) : word('prove.verb.progress', values));
    },
  };
}
