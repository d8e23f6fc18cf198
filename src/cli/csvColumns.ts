/**
 * Two named columns of numbers out of a comma-separated text: header first, columns in any order, others passed over.
 * What is wrong is said with file, line and column.
 */
import { say } from '../words/words';
import { UsageError } from './verb';
import { fileNumber } from './writtenNumber';

export interface CsvPairs {
  readonly pairs: readonly (readonly [number, number])[];
  /** Line of the text each pair stands on, from 1. */
  readonly lines: readonly number[];
}

export function csvPairs(file: string, text: string, names: readonly [string, string]): CsvPairs {
  const rows = text.split(/\r?\n/);
  const header = fields(rows[0] ?? '');
  const [first, second] = names.map((name) => columnOf(file, header, name, names));
  const pairs: (readonly [number, number])[] = [];
  const lines: number[] = [];
  rows.forEach((row, index) => {
    if (index === 0 || row.trim() === '') return;
    const cells = fields(row);
    pairs.push([numberAt(file, row, index, cells, first), numberAt(file, row, index, cells, second)]);
    lines.push(index + 1);
  });
  return { pairs, lines };
}

function fields(row: string): string[] {
  return row
    .replace(/^\uFEFF/, '')
    .split(',')
    .map((field) => field.trim());
}

function columnOf(file: string, header: readonly string[], name: string, names: readonly string[]): number {
  const index = header.indexOf(name);
  if (index >= 0) return index;
  const values = { place: `${file}:1:1`, name, found: header.join(','), wanted: names.join(',') };
  throw new UsageError(say({ id: 'properties.noColumn', values }));
}

function numberAt(
  file: string,
  row: string,
  index: number,
  cells: readonly string[],
  column: number,
): number {
  const found = cells[column] ?? '';
  const value = fileNumber(found);
  if (value !== undefined) return value;
  const before = row.split(',').slice(0, column).join(',');
  const place = `${file}:${index + 1}:${before.length + (column > 0 ? 2 : 1)}`;
  throw new UsageError(say({ id: 'properties.notANumber', values: { place, found } }));
}
