/** One prover in a thread of its own. What it needs of cars, tables and the library is fetched with the first message. */
import '../../layout/allLayouts';
import '../../loop/car/allVehicles';
import { loadRefrigerant, REFRIGERANT_IDS } from '../../refrigerant/fluids';
import { scenarios } from '../../session/scenario/library';
import { proveDesk, type ToProver } from './proveDesk';

const desk = proveDesk(scenarios);
const ready = Promise.all(REFRIGERANT_IDS.map(loadRefrigerant));

self.onmessage = async ({ data }: MessageEvent<ToProver>): Promise<void> => {
  try {
    await ready;
    self.postMessage(desk(data));
  } catch (error) {
    self.postMessage({ type: 'failed', reason: error instanceof Error ? error.message : String(error) });
  }
};
