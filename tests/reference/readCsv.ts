/** Reads a table of tests/reference/properties: rows by column name without its unit; text stays text. */
import { readFileSync } from 'node:fs';

export type CsvRow = Readonly<Record<string, string>>;

export function readCsv(name: string): CsvRow[] {
  const text = readFileSync(new URL(`./properties/${name}`, import.meta.url), 'utf8');
  const [head, ...lines] = text.trim().split('\n');
  const names = head.split(',').map((column) => column.replace(/\[.*\]/, ''));
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(names.map((column, i) => [column, cells[i]]));
  });
}

/** Largest relative difference over all rows, and where it was. */
export function worst<T>(rows: readonly T[], of: (row: T) => number): { error: number; row: T } {
  let found = { error: -1, row: rows[0] };
  for (const row of rows) {
    const error = Math.abs(of(row));
    if (!(error <= found.error)) found = { error, row };
  }
  return found;
}
