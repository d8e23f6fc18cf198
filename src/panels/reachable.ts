/**
 * Whether what the page came from still answers. It is asked before a part is fetched: a browser that could not fetch one
 * remembers that, and would not try it again as long as the page stands.
 */
export class NotFetched extends Error {
  override readonly name = 'NotFetched';
}

/** So long an answer holds. */
const HOLDS_MS = 2000;

/** The page itself has just come. */
let answeredMs = performance.now();

/** Throws `NotFetched`. */
export async function reachable(): Promise<void> {
  if (performance.now() - answeredMs < HOLDS_MS) return;
  try {
    await fetch(location.pathname, { method: 'HEAD', cache: 'no-store' });
  } catch (cause) {
    throw new NotFetched('', { cause });
  }
  answeredMs = performance.now();
}
