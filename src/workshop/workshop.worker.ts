/** Reads and checks what is written in the workshop off the page's own thread, so that typing never waits. */
import { writerOf } from '../instruments/evidenceUnits';
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
let asked = '';
let spoke: Promise<unknown> = Promise.resolve();

/** Cars and tables are fetched once, words of each language that the page comes to speak. What failed is tried again. */
async function load({ language, marks }: Spoken): Promise<void> {
  ready ??= Promise.all([
    ...vehicleIds.flatMap((id) => [loadVehicle(id), loadLayout(id)]),
    ...REFRIGERANT_IDS.map(loadRefrigerant),
  ]);
  if (language !== asked) {
    asked = language;
    spoke = spoke.then(() => setLanguage(language)).then(() => Promise.all(LOTS.map(learnWords)));
  }
  try {
    await Promise.all([ready, spoke]);
  } catch (error) {
    ready = null;
    asked = '';
    spoke = Promise.resolve();
    throw error;
  }
  showMarks(marks);
}

async function answer(request: Request): Promise<Answer> {
  const { number } = request;
  try {
    // what a form wishes takes neither cars nor words
    if (request.ask !== 'change') await load(request.spoken);
    switch (request.ask) {
      case 'vocabulary':
        return { number, gives: 'vocabulary', vocabulary: vocabulary(request.spoken.units) };
      case 'look':
        return { number, gives: 'look', looked: lookAt(FILE, request.text) };
      case 'whole':
        return { number, gives: 'whole', problems: wholly(request.text, request.spoken) };
      case 'change':
        return { number, gives: 'change', changes: changesFor(request.text, request.wish) };
    }
  } catch (error) {
    return { number, gives: 'nothing', failed: String(error) };
  }
}

const wholly = (text: string, { units }: Spoken) =>
  checkScenario(FILE, text, rubrics, () => undefined, writerOf(units));

self.onmessage = async ({ data }: MessageEvent<Request>) => self.postMessage(await answer(data));
