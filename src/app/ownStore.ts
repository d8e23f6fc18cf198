/**
 * Scenarios that do not ship, kept in this browser by the hash of what they say, so that their sessions outlive a reload.
 * What a page shows of one before its end is kept apart from the whole of it, which has the answer. Every call may find
 * storage refused; then nothing is there.
 */
import { type IDBPDatabase, openDB } from 'idb';
import type { ScenarioData } from '../../shared/schema/scenario';
import type { ScenarioWords } from '../../shared/schema/scenarioWords';
import type { ShelfScenario } from '../../shared/schema/shelfScenario';

export interface OwnShown {
  /** With its own id; the page's is `ownId`. */
  readonly shelf: ShelfScenario;
  readonly words: Omit<ScenarioWords, 'debrief'>;
  /** Engine that found nothing against it. */
  readonly engineHash: string;
}

const NAME = 'portside-own';
const SHOWN = 'shown';
const WHOLE = 'whole';
const ORDER = 'order';
/** Under it stand the hashes, oldest first. */
const KEPT = 'kept';
const MOST = 16;

let opening: Promise<IDBPDatabase> | null = null;

function database(): Promise<IDBPDatabase> {
  opening ??= openDB(NAME, 1, {
    upgrade(db) {
      for (const store of [SHOWN, WHOLE, ORDER]) db.createObjectStore(store);
    },
  });
  return opening;
}

/** False where nothing can be kept. The oldest go when there are too many; `inUse` stays. */
export async function keepOwn(
  hash: string,
  shown: OwnShown,
  whole: ScenarioData,
  inUse: string | null,
): Promise<boolean> {
  try {
    const all = (await database()).transaction([SHOWN, WHOLE, ORDER], 'readwrite');
    const found: unknown = await all.objectStore(ORDER).get(KEPT);
    const { staying, leaving } = orderWith(hash, Array.isArray(found) ? found.map(String) : [], inUse);
    for (const one of leaving) {
      await all.objectStore(SHOWN).delete(one);
      await all.objectStore(WHOLE).delete(one);
    }
    await all.objectStore(SHOWN).put(shown, hash);
    await all.objectStore(WHOLE).put(whole, hash);
    await all.objectStore(ORDER).put(staying, KEPT);
    await all.done;
    return true;
  } catch {
    return false;
  }
}

/** Hashes that stay, oldest first, and those that have to go for it. */
export function orderWith(
  hash: string,
  before: readonly string[],
  inUse: string | null,
): { readonly staying: string[]; readonly leaving: string[] } {
  const others = before.filter((one) => one !== hash);
  const leaving = others.filter((one) => one !== inUse).slice(0, Math.max(0, others.length + 1 - MOST));
  return { staying: [...others.filter((one) => !leaving.includes(one)), hash], leaving };
}

export const shownOwn = (hash: string): Promise<OwnShown | null> => kept<OwnShown>(SHOWN, hash);
export const wholeOwn = (hash: string): Promise<ScenarioData | null> => kept<ScenarioData>(WHOLE, hash);

async function kept<Kept>(store: string, hash: string): Promise<Kept | null> {
  try {
    return ((await (await database()).get(store, hash)) as Kept | undefined) ?? null;
  } catch {
    return null;
  }
}
