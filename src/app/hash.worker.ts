/** Runs the standard run off the page's own thread. */
import { engineHash } from '../session/engineHash';
import { standardRun } from '../session/standardRun';

self.postMessage({ engineHash, hashes: standardRun() });
