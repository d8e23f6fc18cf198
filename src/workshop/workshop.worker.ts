/** Reads and checks what is written in the workshop off the page's own thread, so that typing never waits. */
import { loadLayout } from '../layout/layouts';
import { loadVehicle, vehicleIds } from '../loop/car/vehicles';
import { loadRefrigerant, REFRIGERANT_IDS } from '../refrigerant/fluids';
import { checkScenario } from '../scoring/checkScenario';
import { rubrics } from '../session/scenario/rubrics';
import { showMarks } from '../units/format';
import { learnWords, setLanguage } from '../words/words';
import { changesFor } from './edit/changesFor';
import { lookAt } from './reader/lookAt';
import type { Answer, Request, Spoken } from './reader/protocol';
import { vocabulary } from './reader/vocabulary';

/** Problems name it with their place. */
const FILE = 'text';
const LOTS = ['page', 'job', 'findings', 'workshop'] as const;

let ready: Promise<unknown> | null = null;

/** Cars, tables and words are fetched once; a page that speaks another language starts another worker. */
function load({ language, marks }: Spoken): Promise<unknown> {
  showMarks(marks);
  ready ??= Promise.all([
    ...vehicleIds.flatMap((id) => [loadVehicle(id), loadLayout(id)]),
    ...REFRIGERANT_IDS.map(loadRefrigerant),
    setLanguage(language).then(() => Promise.all(LOTS.map(learnWords))),
  ]);
  return ready;
}

async function answer(request: Request): Promise<Answer> {
  const { number } = request;
  try {
    // what a form wishes takes neither cars nor words
    if (request.ask !== 'change') await load(request.spoken);
    switch (request.ask) {
      case 'vocabulary':
        return { number, gives: 'vocabulary', vocabulary: vocabulary() };
      case 'look':
        return { number, gives: 'look', looked: lookAt(FILE, request.text) };
      case 'whole':
        return { number, gives: 'whole', problems: checkScenario(FILE, request.text, rubrics) };
      case 'change':
        return { number, gives: 'change', changes: changesFor(request.text, request.wish) };
    }
  } catch (error) {
    return { number, gives: 'nothing', failed: String(error) };
  }
}

self.onmessage = async ({ data }: MessageEvent<Request>) => self.postMessage(await answer(data));
