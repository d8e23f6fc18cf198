/** A kind of thing that `list` knows: its entries as data, and the columns that tell them in words. */
import { word } from '../../words/words';
import { tableText } from '../table';
import { carsText, type Heading } from './cells';

export interface Listed {
  readonly entries: () => readonly unknown[];
  readonly table: () => string;
}

type Columns<Entry> = Partial<Readonly<Record<Heading, (entry: Entry) => string>>>;

/** With `carOf`, entries that differ by their car alone are told once, with all their cars behind. */
export function listed<Entry>(
  entries: () => readonly Entry[],
  columns: Columns<Entry>,
  carOf?: (entry: Entry) => string,
): Listed {
  const headings = Object.keys(columns) as Heading[];
  const rowOf = (entry: Entry): string[] => headings.map((one) => columns[one]?.(entry) ?? '');
  return {
    entries,
    table: () => {
      const rows = entries().map((entry) => ({ row: rowOf(entry), car: carOf?.(entry) ?? '' }));
      const told = carOf ? withCars(rows) : rows.map(({ row }) => row);
      const shown = carOf ? [...headings, 'cars' as const] : headings;
      return tableText(
        shown.map((one) => word(`list.${one}`)),
        told,
      );
    },
  };
}

function withCars(rows: readonly { readonly row: readonly string[]; readonly car: string }[]): string[][] {
  const found = new Map<string, { readonly row: readonly string[]; readonly cars: string[] }>();
  for (const { row, car } of rows) {
    const known = found.get(row.join('\t'));
    if (known) known.cars.push(car);
    else found.set(row.join('\t'), { row, cars: [car] });
  }
  return [...found.values()].map(({ row, cars }) => [...row, carsText(cars)]);
}
