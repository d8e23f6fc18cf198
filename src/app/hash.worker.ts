/** Runs the standard run off the page's own thread. */
import { loadLayout } from '../layout/layouts';
import { loadVehicle } from '../loop/car/vehicles';
import { loadRefrigerant } from '../refrigerant/fluids';
import { engineHash } from '../session/engineHash';
import { standardRun } from '../session/standardRun';

await Promise.all([loadRefrigerant('R-134a'), loadVehicle('sedan'), loadLayout('sedan')]);
self.postMessage({ engineHash, hashes: standardRun() });
