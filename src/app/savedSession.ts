/**
 * The session of this browser, kept so that a killed tab loses nothing: its log, and whether it is finished. One session
 * at a time. Every call may find storage refused; then it says so and nothing else happens.
 */
import { type IDBPDatabase, openDB } from 'idb';
import type { SessionLog } from '../session/corePort';

const NAME = 'portside';
const STORE = 'session';
const KEY = 'current';

let opening: Promise<IDBPDatabase> | null = null;

function database(): Promise<IDBPDatabase> {
  opening ??= openDB(NAME, 1, {
    upgrade(db) {
      db.createObjectStore(STORE);
    },
  });
  return opening;
}

/** True where it could be kept. */
export async function keepLog(log: SessionLog): Promise<boolean> {
  try {
    await (await database()).put(STORE, log, KEY);
    return true;
  } catch {
    return false;
  }
}

export async function keptLog(): Promise<SessionLog | null> {
  try {
    const found: unknown = await (await database()).get(STORE, KEY);
    return isLog(found) ? found : null;
  } catch {
    return null;
  }
}

export async function forgetLog(): Promise<void> {
  try {
    await (await database()).delete(STORE, KEY);
  } catch {
    // Nothing was kept.
  }
}

function isLog(found: unknown): found is SessionLog {
  return typeof found === 'object' && found !== null && (found as SessionLog).format === 'portside-session-1';
}
