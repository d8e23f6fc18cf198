/** `portside VERB`: collects the verbs of src/cli/verbs, one a file, and dispatches. */
import '../layout/allLayouts';
import '../loop/car/allVehicles';
import '../refrigerant/allFluids';
import { dispatch } from './dispatch';
import { processIo } from './io';
import type { Verb } from './verb';

const files = import.meta.glob<Verb>('./verbs/*.ts', { eager: true, import: 'default' });
const verbs = Object.values(files).sort((a, b) => (a.name < b.name ? -1 : 1));

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});
process.exitCode = await dispatch(verbs, process.argv.slice(2), processIo);
