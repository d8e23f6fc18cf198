/**
 * Do two sessions stand alike, so that the same commands lead to the same numbers from here on? Only what nothing follows
 * from may differ: lines of the card, the list of what happened last, and when the last command came.
 */
import { canonicalJson } from '../canonicalJson';
import type { JobBook } from '../jobBook';
import type { RunSnapshot } from '../sessionRun';

export function sameRun(a: RunSnapshot, b: RunSnapshot): boolean {
  return (
    sameNumbers(a.plant.numbers, b.plant.numbers) &&
    sameNumbers(a.watches, b.watches) &&
    a.plant.structure === b.plant.structure &&
    canonicalJson(a.criticals) === canonicalJson(b.criticals) &&
    canonicalJson(a.controller) === canonicalJson(b.controller) &&
    telling(a.book) === telling(b.book)
  );
}

/** Bit for bit; two of no value are the same. */
function sameNumbers(a: Float64Array, b: Float64Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
  return true;
}

function telling(book: JobBook): string {
  const { card: _card, happened: _happened, lastCommandStep: _last, ...rest } = book;
  return canonicalJson(rest);
}
