/** Where two lists of actions differ: from the first step at which they are not the same, to the last. Null: nowhere. */
import { canonicalJson } from '../canonicalJson';
import type { NumberedCommand } from './editLog';

export interface ChangedSpan {
  readonly fromStep: number;
  readonly toStep: number;
}

type Entries = readonly NumberedCommand[];

export function changedSpan(before: Entries, after: Entries): ChangedSpan | null {
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && same(before[head], after[head])) head++;
  let tail = 0;
  while (tail < shorter - head && same(before.at(-1 - tail), after.at(-1 - tail))) tail++;
  const changed = [
    ...before.slice(head, before.length - tail),
    ...after.slice(head, after.length - tail),
  ].map(({ step }) => step);
  if (changed.length === 0) return null;
  return { fromStep: Math.min(...changed), toStep: Math.max(...changed) };
}

function same(a: NumberedCommand | undefined, b: NumberedCommand | undefined): boolean {
  if (!a || !b || a.step !== b.step || a.number !== b.number) return false;
  return a.command === b.command || canonicalJson(a.command) === canonicalJson(b.command);
}
