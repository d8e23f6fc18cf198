/** `portside VERB`: collects the verbs of src/cli/verbs, one a file, and dispatches. */
import '../layout/allLayouts';
import '../loop/car/allVehicles';
import '../refrigerant/allFluids';
import { verbs } from './allVerbs';
import { dispatch } from './dispatch';
import { processIo } from './io';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
process.exitCode = await dispatch(verbs, process.argv.slice(2), processIo);
