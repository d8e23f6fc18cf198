/**
 * The session of this browser, kept so that a killed tab loses nothing: its log with its hashes, and the score it had
 * last. One session at a time. Every call may find storage refused; then it says so and nothing else happens.
 */
import { type IDBPDatabase, openDB } from 'idb';
import type { SessionLog } from '../session/corePort';
import type { ShownLast, Thought } from '../session/sessionFileText';
import { keepText, tellRefused } from './storage';

export interface KeptSession {
  readonly log: SessionLog;
  /** Null until it was scored. */
  readonly last: ShownLast | null;
  readonly thought?: Thought;
}

const NAME = 'portside';
const STORE = 'session';
const KEY = 'current';
/** In the store that writes at once. */
const LEFT = 'portside-left';
const TRIED = 'portside-tried';

let opening: Promise<IDBPDatabase> | null = null;

function database(): Promise<IDBPDatabase> {
  opening ??= openDB(NAME, 1, {
    upgrade(db) {
      db.createObjectStore(STORE);
    },
  });
  return opening;
}

/** The score, and what was thought of it, stay with the very log they were made of. */
export async function keepLog(log: SessionLog): Promise<void> {
  tryToLeave();
  const leave = (): void => void keepText(LEFT, JSON.stringify(log));
  addEventListener('pagehide', leave);
  try {
    const kept = withLog(await keptSession(), log);
    await (await database()).put(STORE, kept, KEY);
  } catch {
    tellRefused();
  } finally {
    removeEventListener('pagehide', leave);
  }
}

/** Keeps the score of a finished session beside its log. */
export async function keepScored(kept: KeptSession): Promise<void> {
  try {
    await (await database()).put(STORE, kept, KEY);
  } catch {
    tellRefused();
  }
}

export async function keptSession(): Promise<KeptSession | null> {
  try {
    const store = await database();
    const found = keptOf(await store.get(STORE, KEY));
    const left = leftLog();
    if (!left) return found;
    const kept = withLog(found, left);
    await store.put(STORE, kept, KEY);
    localStorage.removeItem(LEFT);
    return kept;
  } catch {
    return null;
  }
}

const withLog = (before: KeptSession | null, log: SessionLog): KeptSession =>
  before && sameLog(before.log, log) ? { ...before, log } : { log, last: null };

let hasTried = false;
/**
 * A page that goes away while the store is still being written leaves its log behind at once, or the store would lose it.
 * Whether it may is tried beforehand: by then nobody reads what is said.
 */
function tryToLeave(): void {
  if (hasTried) return;
  hasTried = true;
  if (keepText(TRIED, '')) localStorage.removeItem(TRIED);
}

function leftLog(): SessionLog | null {
  try {
    const left: unknown = JSON.parse(localStorage.getItem(LEFT) ?? 'null');
    return isLog(left) ? left : null;
  } catch {
    return null;
  }
}

/** What was found in the store as a session, or null. A bare log is one that was never scored. */
export function keptOf(found: unknown): KeptSession | null {
  if (isLog(found)) return { log: found, last: null };
  if (typeof found !== 'object' || found === null) return null;
  const { log, last, thought } = found as Partial<KeptSession>;
  return isLog(log) ? { log, last: last ?? null, ...(thought ? { thought } : {}) } : null;
}

const sameJob = (a: SessionLog, b: SessionLog): boolean =>
  a.scenarioId === b.scenarioId && a.seed === b.seed && a.mode === b.mode;

/** The same session at the same moment. */
export const sameLog = (a: SessionLog, b: SessionLog): boolean =>
  sameJob(a, b) &&
  a.engineHash === b.engineHash &&
  a.lastStep === b.lastStep &&
  a.commands.length === b.commands.length;

/** Another session that another tab has kept since stays. */
export async function forgetLog(log: SessionLog): Promise<void> {
  try {
    const kept = await keptSession();
    if (kept !== null && !sameJob(kept.log, log)) return;
    await (await database()).delete(STORE, KEY);
  } catch {
    // Nothing was kept.
  }
}

/** The shape that the page itself relies on; the rest is looked at where the log is run. */
function isLog(found: unknown): found is SessionLog {
  if (typeof found !== 'object' || found === null) return false;
  const { format, scenarioId, lastStep, commands } = found as Partial<SessionLog>;
  return (
    format === 'portside-session-1' &&
    typeof scenarioId === 'string' &&
    Number.isSafeInteger(lastStep) &&
    Array.isArray(commands) &&
    commands.every((entry) => typeof entry?.command?.do === 'string')
  );
}
