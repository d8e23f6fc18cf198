/** "Did you mean": the known word that takes the fewest slips of a key, where that is few enough to be a slip. */
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

/** Insertions, deletions, replacements and swaps of neighbours that turn `a` into `b`. */
function editsBetween(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = rows[i - 1][j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(replaced, rows[i - 1][j] + 1, row[j - 1] + 1));
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) row[j] = Math.min(row[j], rows[i - 2][j - 2] + 1);
    }
    rows.push(row);
  }
  return rows[a.length][b.length];
}
