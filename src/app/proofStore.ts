/** Proofs kept in this browser by all that decides them; a changed engine, prover or text has another key. */
import { type IDBPDatabase, openDB } from 'idb';
import { proofIn, proofText } from '../workshop/proof/proofText';
import type { KeptProofs } from '../workshop/proof/provePool';

const NAME = 'portside-proofs';
const STORE = 'proof';
const ORDER = 'order';
/** Under it stand the keys, oldest first. */
const KEPT = 'kept';
const MOST = 24;

let opening: Promise<IDBPDatabase> | null = null;

function database(): Promise<IDBPDatabase> {
  opening ??= openDB(NAME, 1, {
    upgrade(db) {
      db.createObjectStore(STORE);
      db.createObjectStore(ORDER);
    },
  });
  return opening;
}

export const proofStore: KeptProofs = {
  async find(key) {
    try {
      return proofIn(await (await database()).get(STORE, key));
    } catch {
      return null;
    }
  },
  async keep(key, proof) {
    try {
      const all = (await database()).transaction([STORE, ORDER], 'readwrite');
      const found: unknown = await all.objectStore(ORDER).get(KEPT);
      const order = [...(Array.isArray(found) ? found.map(String) : []).filter((one) => one !== key), key];
      for (const one of order.slice(0, Math.max(0, order.length - MOST)))
        await all.objectStore(STORE).delete(one);
      await all.objectStore(STORE).put(proofText(proof), key);
      await all.objectStore(ORDER).put(order.slice(-MOST), KEPT);
      await all.done;
    } catch {
      // It is made again the next time.
    }
  },
};
