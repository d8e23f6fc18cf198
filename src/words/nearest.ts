/** "Did you mean": the known word that takes the fewest single-letter edits, where that is few enough to be a slip. */
export function nearest(given: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let bestEdits = 1 + Math.max(1, Math.floor(given.length / 3));
  for (const candidate of known) {
    const edits = editsBetween(given.toLowerCase(), candidate.toLowerCase());
    if (edits < bestEdits) {
      best = candidate;
      bestEdits = edits;
    }
  }
  return best;
}

/** Insertions, deletions and replacements that turn `a` into `b`. */
function editsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, row[j] + 1, next[j - 1] + 1));
    }
    row = next;
  }
  return row[b.length];
}
