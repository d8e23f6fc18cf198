/**
 * One prover in a thread of its own, with all cars, tables and the library. Those who play go by what the twin says, and
 * that is English here whatever the page speaks, so that a proof is the same everywhere.
 */
import '../../layout/allLayouts';
import '../../loop/car/allVehicles';
import { loadRefrigerant, REFRIGERANT_IDS } from '../../refrigerant/fluids';
import { scenarios } from '../../session/scenario/library';
import { type Lot, learnWords } from '../../words/words';
import { proveDesk, type ToProver } from './proveDesk';

const LOTS: readonly Lot[] = ['page', 'job', 'findings', 'workshop'];

const desk = proveDesk(scenarios);
const ready = Promise.all([...REFRIGERANT_IDS.map(loadRefrigerant), ...LOTS.map(learnWords)]);

self.onmessage = async ({ data }: MessageEvent<ToProver>): Promise<void> => {
  try {
    await ready;
    self.postMessage(desk(data));
  } catch (error) {
    self.postMessage({ type: 'failed', reason: error instanceof Error ? error.message : String(error) });
  }
};
