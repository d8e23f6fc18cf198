/**
 * What is told of scenarios in the page's language: of all on the shelf at once, of one job when it is opened, of its end
 * when that is shown. A language fetches its own texts only. A scenario of one's own speaks as it is written.
 */
import { afterJob, law, ofJob, onShelf } from 'virtual:told';
import type { ScenarioWords } from '../../shared/schema/scenarioWords';
import { tellLaw } from '../words/lawTold';

type JobWords = Pick<ScenarioWords, 'owner' | 'papers' | 'hints'>;
type ShelfWords = Pick<ScenarioWords, 'title' | 'complaint' | 'deliver'>;

const ENGLISH = 'en';
const NOTHING: JobWords = { owner: {}, papers: {}, hints: [] };

let language = ENGLISH;
let shelf: Readonly<Record<string, ShelfWords>> = {};
const jobs = new Map<string, JobWords>();
const ownJobs = new Map<string, ShelfWords & JobWords>();
let placesAreTold = false;

/** Fetches what the shelf tells, and again what has been told of jobs. */
export async function tellIn(wished: string): Promise<void> {
  const ids = [...jobs.keys()];
  const [onIt, ...ofThem] = await Promise.all([onShelf[wished](), ...ids.map((id) => ofJob[wished][id]())]);
  // a job may have been told in the language before in the meantime
  if (jobs.size > ids.length) return tellIn(wished);
  language = wished;
  shelf = onIt;
  ids.forEach((id, at) => {
    jobs.set(id, ofThem[at]);
  });
  if (placesAreTold) await tellPlaces();
}

/** Nothing of this job has to be fetched to tell of it. */
export const isTold = (id: string): boolean => jobs.has(id) || !Object.hasOwn(ofJob[language], id);

/** Fetches what is told of a job; nothing where there is no such scenario. */
export async function tellJob(id: string): Promise<void> {
  if (isTold(id)) return;
  const asked = language;
  const [words] = await Promise.all([ofJob[asked][id](), tellPlaces()]);
  jobs.set(id, words);
  if (asked !== language) await tellIn(language);
}

/** Holds what is told of a scenario that does not ship. */
export async function tellOwn(id: string, words: ShelfWords & JobWords): Promise<void> {
  ownJobs.set(id, words);
  await tellPlaces();
}

/** The rules of places; English ones stand in the places' own files. */
export async function tellPlaces(): Promise<void> {
  placesAreTold = true;
  const asked = language;
  const words = asked === ENGLISH ? {} : await law[asked]();
  if (asked === language) tellLaw(words);
}

/** What the end of a job tells; null where the scenario's own words are the ones to show. */
export async function toldAfter(id: string): Promise<string | null> {
  return language === ENGLISH || !Object.hasOwn(afterJob[language], id) ? null : afterJob[language][id]();
}

export const toldOf = (id: string): ShelfWords & JobWords =>
  ownJobs.get(id) ?? { ...shelf[id], ...(jobs.get(id) ?? NOTHING) };
