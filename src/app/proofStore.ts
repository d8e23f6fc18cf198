/** Proofs kept in this browser by all that decides them; a changed engine, prover or text has another key. */
import { type IDBPDatabase, openDB } from 'idb';
import type { Proof } from '../prover/proof';
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

/** Text, not data: one that was cut short cannot be read, and is as if it were not there. */
export const proofStore: KeptProofs = {
  async find(key) {
    try {
      const text: unknown = await (await database()).get(STORE, key);
      return typeof text === 'string' ? (JSON.parse(text) as Proof) : null;
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
      await all.objectStore(STORE).put(JSON.stringify(proof), key);
      await all.objectStore(ORDER).put(order.slice(-MOST), KEPT);
      await all.done;
    } catch {
      // It is made again the next time.
    }
  },
};
