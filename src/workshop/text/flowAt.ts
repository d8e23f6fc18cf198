/** Where a cursor stands within `{ key: value, … }` and `[item, …]`: read up to it, so whatever follows may be unfinished. */
export interface FlowAt {
  /** Keys and positions from the outermost bracket inwards. */
  readonly path: readonly (string | number)[];
  readonly writes: 'key' | 'value' | 'text';
  /** Where the word begins that is being written, counted from the start of the text read. */
  readonly from: number;
  /** Keys of the innermost map that are written before. */
  readonly beside: readonly string[];
}

interface Open {
  readonly isMap: boolean;
  readonly keys: string[];
  key: string | null;
  index: number;
}

/** Null where every bracket is shut again. `written` begins with a bracket. */
export function flowAt(written: string): FlowAt | null {
  const open: Open[] = [];
  let from = 0;
  let quote = '';
  for (let at = 0; at < written.length; at++) {
    const letter = written[at];
    if (quote !== '') {
      if (letter === quote) quote = '';
      continue;
    }
    const top = open.at(-1);
    if ((letter === '"' || letter === "'") && written.slice(from, at).trim() === '') quote = letter;
    else if (letter === '{' || letter === '[')
      open.push({ isMap: letter === '{', keys: [], key: null, index: 0 });
    else if (letter === '}' || letter === ']') {
      open.pop();
      if (open.length === 0) return null;
    } else if (letter === ',' && top) {
      top.key = null;
      top.index += 1;
    } else if (letter === ':' && top?.isMap && top.key === null && /^(\s|$)/.test(written.slice(at + 1))) {
      top.key = written.slice(from, at).trim();
      top.keys.push(top.key);
    } else continue;
    if (quote === '') from = at + 1;
  }
  return told(open, written, from, quote !== '');
}

function told(open: readonly Open[], written: string, from: number, isQuoted: boolean): FlowAt {
  const inner = open[open.length - 1];
  const path = open.flatMap(({ isMap, key, index }): (string | number)[] =>
    isMap ? (key === null ? [] : [key]) : [index],
  );
  const begins = from + (written.slice(from).length - written.slice(from).trimStart().length);
  if (isQuoted) return { path, writes: 'text', from: begins, beside: inner.keys };
  return {
    path,
    writes: inner.isMap && inner.key === null ? 'key' : 'value',
    from: begins,
    beside: inner.keys,
  };
}
