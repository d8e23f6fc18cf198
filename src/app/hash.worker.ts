/** Runs the standard run off the page's own thread. */
import { loadRefrigerant } from '../refrigerant/fluids';
import { engineHash } from '../session/engineHash';
import { standardRun } from '../session/standardRun';

await loadRefrigerant('R-134a');
self.postMessage({ engineHash, hashes: standardRun() });
