/**
 * What came anew from the worker, with every part that is as it was taken from before: then only what changed is drawn anew.
 * Plain data only.
 */
export function keptSame<T>(before: unknown, now: T): T {
  if (Object.is(before, now)) return now;
  if (!isParted(before) || !isParted(now) || Array.isArray(before) !== Array.isArray(now)) return now;
  const keys = Object.keys(now);
  const parts = keys.map((key) => keptSame(before[key], now[key]));
  const isSame =
    Object.keys(before).length === keys.length &&
    keys.every((key, i) => key in before && Object.is(before[key], parts[i]));
  if (isSame) return before as T;
  if (Array.isArray(now)) return parts as T;
  return Object.fromEntries(keys.map((key, i) => [key, parts[i]])) as T;
}

const isParted = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
