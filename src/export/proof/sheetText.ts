/** The tree of a printed page as plain text for a terminal: headings, paragraphs, lists, and tables in columns. */
import type { Leaf } from '../card/leaf';

const GAP = '  ';
const WIDEST = 44;

export function sheetText(sheet: Leaf): string {
  return `${blocksOf(sheet).join('\n')}\n`;
}

function blocksOf(part: Leaf): string[] {
  switch (part.tag) {
    case 'h1':
    case 'h2':
      return ['', flat(part), (part.tag === 'h1' ? '=' : '-').repeat(flat(part).length)];
    case 'p':
    case 'footer':
      return [...(part.tag === 'footer' ? [''] : []), flat(part)];
    case 'ul':
      return part.inside.map((item) => `- ${flat(item)}`);
    case 'dl':
      return pairsOf(part);
    case 'table':
      return ['', ...columns(rowsOf(part)), ''];
    default:
      return part.inside.flatMap((one) => (typeof one === 'string' ? [one] : blocksOf(one)));
  }
}

const flat = (part: Leaf | string): string =>
  typeof part === 'string' ? part : part.inside.map(flat).join('');

function pairsOf({ inside }: Leaf): string[] {
  const texts = inside.map(flat);
  return texts.flatMap((name, at) => (at % 2 === 0 ? [`${name}: ${texts[at + 1]}`] : []));
}

const isRow = (part: Leaf | string): boolean => typeof part !== 'string' && part.tag === 'tr';

const rowsOf = (table: Leaf): string[][] =>
  table.inside.flatMap((part) => {
    if (typeof part === 'string') return [];
    return isRow(part) ? [part.inside.map(flat)] : rowsOf(part);
  });

/** Each column as wide as its widest cell, up to a bound; what is longer pushes its own row along. */
function columns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows.reduce<number[]>(
    (most, row) =>
      row
        .map((cell, at) => Math.max(most[at] ?? 0, Math.min(WIDEST, cell.length)))
        .concat(most.slice(row.length)),
    [],
  );
  return rows.map((row) =>
    row
      .map((cell, at) => cell.padEnd(widths[at]))
      .join(GAP)
      .trimEnd(),
  );
}
