/** Where something stands in a text of JSON: a value by its path, a key, or the first letter that belongs to no JSON. */

export type JsonPath = readonly (string | number)[];

/** Counted from 1. */
export interface JsonPlace {
  readonly line: number;
  readonly column: number;
}

const SPACE = /[ \t\n\r]*/y;
const STRING = /"(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*"/y;
const PLAIN = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

/** Stops reading: at a slip, or when what was looked for is found. */
class Stop extends Error {
  constructor(readonly at: number) {
    super();
  }
}

/** Of the value at `path`, or of its key; of the innermost group around it that is there where it is not. */
export function placeInJson(text: string, path: JsonPath, part: 'value' | 'key' = 'value'): JsonPlace {
  let [best, depth] = [0, -1];
  stopOf(text, (here, at, isKey) => {
    const isOn = here.length <= path.length && here.every((name, index) => name === path[index]);
    const isWhole = here.length === path.length;
    if (!isOn || (isKey && !(isWhole && part === 'key')) || here.length <= depth) return;
    [best, depth] = [at, here.length];
    if (isWhole) throw new Stop(at);
  });
  return placeAt(text, best);
}

/** Where a text stops being JSON; null where it does not. */
export function jsonSlip(text: string): JsonPlace | null {
  const at = stopOf(text, () => {});
  return at === null ? null : placeAt(text, at);
}

type Visit = (path: JsonPath, at: number, isKey: boolean) => void;

function stopOf(text: string, visit: Visit): number | null {
  try {
    readAll(text, visit);
    return null;
  } catch (error) {
    if (error instanceof Stop) return error.at;
    // nested too deep to be followed
    if (error instanceof RangeError) return 0;
    throw error;
  }
}

function readAll(text: string, visit: Visit): void {
  let at = 0;
  const path: (string | number)[] = [];
  const take = (pattern: RegExp): string => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found === undefined) throw new Stop(at);
    at += found.length;
    return found;
  };
  const takes = (letter: string): boolean => {
    take(SPACE);
    if (text[at] !== letter) return false;
    at += 1;
    return true;
  };
  const must = (letter: string): void => {
    if (!takes(letter)) throw new Stop(at);
  };
  const list = (close: string, entry: (index: number) => void): void => {
    if (takes(close)) return;
    for (let index = 0; index === 0 || takes(','); index++) {
      entry(index);
      path.pop();
    }
    must(close);
  };
  const pair = (): void => {
    take(SPACE);
    const start = at;
    path.push(JSON.parse(take(STRING)) as string);
    visit(path, start, true);
    must(':');
    value();
  };
  const value = (): void => {
    take(SPACE);
    visit(path, at, false);
    if (takes('{')) list('}', pair);
    else if (takes('['))
      list(']', (index) => {
        path.push(index);
        value();
      });
    else if (text[at] === '"') take(STRING);
    else take(PLAIN);
  };
  value();
  take(SPACE);
  if (at < text.length) throw new Stop(at);
}

function placeAt(text: string, offset: number): JsonPlace {
  const before = text.slice(0, offset).split(/\r\n?|\n/);
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
