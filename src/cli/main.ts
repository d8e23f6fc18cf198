/**
 * `portside VERB`: collects the verbs of src/cli/verbs, one a file, and dispatches. Started once more as a thread it serves
 * the jobs of proofs.
 */
import { isMainThread } from 'node:worker_threads';
import '../layout/allLayouts';
import '../loop/car/allVehicles';
import '../refrigerant/allFluids';
import { word } from '../words/words';
import { verbs } from './allVerbs';
import { dispatch, EXIT } from './dispatch';
import { processIo } from './io';
import { serveJobs } from './prove/serveJobs';

if (isMainThread) {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    processIo.note(word('cli.cannotWrite', { file: 'stdout', reason: String(error.code) }));
    process.exit(EXIT.usage);
  });
  process.exitCode = await dispatch(verbs, process.argv.slice(2), processIo);
} else serveJobs();
