/**
 * What is being written, kept in this browser a moment after each change, and the text that was here before it. Another tab
 * may write as well: whoever writes last is kept. Storage may refuse; then nothing is kept and the page says so.
 */
export interface Draft {
  readonly text: string;
  /** When it was kept, ms since 1970. */
  readonly atMs: number;
  /** Which tab wrote it. */
  readonly tab: string;
}

const NOW = 'portside-workshop';
const BEFORE = 'portside-workshop-before';
export const keptDraft = (): Draft | null => read(NOW);
export const draftBefore = (): Draft | null => read(BEFORE);

/** False where nothing can be kept. */
export const keepDraft = (draft: Draft): boolean => write(NOW, draft);

/** The text that is there now becomes the one before. */
export function setAside(draft: Draft): void {
  write(BEFORE, draft);
}

/** Calls back when another tab has kept a text of its own; gives what ends that. */
export function onOtherTab(tell: (draft: Draft) => void): () => void {
  const heard = ({ key, newValue }: StorageEvent): void => {
    const draft = key === NOW ? draftIn(newValue) : null;
    if (draft) tell(draft);
  };
  addEventListener('storage', heard);
  return () => removeEventListener('storage', heard);
}

function read(key: string): Draft | null {
  try {
    return draftIn(localStorage.getItem(key));
  } catch {
    return null;
  }
}

function write(key: string, draft: Draft): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

/** Whatever was found, as a draft; null where it is none. */
export function draftIn(stored: string | null): Draft | null {
  try {
    const { text, atMs, tab } = JSON.parse(stored ?? '') as Partial<Draft>;
    if (typeof text !== 'string' || text === '') return null;
    return { text, atMs: Number.isFinite(atMs) ? Number(atMs) : 0, tab: String(tab) };
  } catch {
    return null;
  }
}
