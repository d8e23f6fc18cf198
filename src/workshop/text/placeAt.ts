/**
 * Where in a scenario a cursor stands: the keys and list positions that lead there, and whether a key or a value is being
 * written. Goes by indentation and brackets alone, so it answers while the text is half written and can be read by nobody.
 */
import { flowAt } from './flowAt';

export interface PlaceAt {
  readonly path: readonly (string | number)[];
  /** `text`: sentences or a remark, with which nobody can help. */
  readonly writes: 'key' | 'value' | 'text';
  /** Where the word begins that is being written. */
  readonly from: number;
  /** Within brackets. */
  readonly inBrackets: boolean;
  /** Keys of the same brackets that are written before. */
  readonly beside?: readonly string[];
}

interface Frame {
  readonly column: number;
  readonly key: string | null;
  index: number;
}

interface Reading {
  readonly frames: Frame[];
  /** Column of the key whose sentences go on over the next lines; -1 for none. */
  textColumn: number;
  /** What has been read since a bracket that is still open; null for none. */
  bracket: string | null;
}

const KEY = /^("[^"]*"|'[^']*'|[^\s#:{}[\],"'][^:#{}[\],]*?)\s*:(?=\s|$)/;

export function placeAt(text: string, offset: number): PlaceAt {
  const reading = readTo(text, offset, () => undefined);
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  return placeIn(reading, text.slice(start, offset), start);
}

/** Every key that is written in the text, as its path joined by points; a list's items stand as `[]`. */
export function keysWritten(text: string): ReadonlySet<string> {
  const found = new Set<string>();
  readTo(text, text.length + 1, (frames) => found.add(pathOf(frames).join('/')));
  return found;
}

function readTo(text: string, offset: number, onKey: (frames: readonly Frame[]) => void): Reading {
  const reading: Reading = { frames: [], textColumn: -1, bracket: null };
  for (let start = 0; start < text.length; ) {
    const end = text.indexOf('\n', start);
    if (end < 0 || end >= offset) {
      if (offset > text.length) readLine(reading, text.slice(start), onKey);
      break;
    }
    readLine(reading, text.slice(start, end), onKey);
    start = end + 1;
  }
  return reading;
}

const indentOf = (line: string): number => line.length - line.trimStart().length;
const isNothing = (line: string): boolean => /^\s*(#.*)?$/.test(line);

/** One whole line; what it opens stays open. */
function readLine(reading: Reading, line: string, onKey: (frames: readonly Frame[]) => void): void {
  if (reading.bracket !== null) {
    const written = `${reading.bracket}\n${line}`;
    reading.bracket = flowAt(written) === null ? null : written;
    return;
  }
  if (isNothing(line) || isText(reading, line)) return;
  const { value, hasKey } = openedBy(reading, line);
  if (hasKey) onKey(reading.frames);
  reading.textColumn = isSentence(value) && hasKey ? reading.frames[reading.frames.length - 1].column : -1;
  if (/^[{[]/.test(value) && flowAt(value) !== null) reading.bracket = value;
}

/** Lines that are further in than a key with a value belong to that value. */
function isText(reading: Reading, line: string): boolean {
  if (reading.textColumn < 0) return false;
  if (line.trim() === '' || indentOf(line) > reading.textColumn) return true;
  reading.textColumn = -1;
  return false;
}

const isSentence = (value: string): boolean => value !== '' && !/^[{[#]/.test(value);

/** Takes the dashes and the key that a line begins with; where its value begins, and the value. */
function openedBy(reading: Reading, line: string): { column: number; value: string; hasKey: boolean } {
  let column = indentOf(line);
  for (let dash = /^-(\s+|$)/.exec(line.slice(column)); dash; dash = /^-(\s+|$)/.exec(line.slice(column))) {
    openItem(reading.frames, column);
    column += dash[0].length;
  }
  const key = KEY.exec(line.slice(column));
  if (!key) return { column, value: line.slice(column), hasKey: false };
  shut(reading.frames, column);
  reading.frames.push({ column, key: key[1].replace(/^["']|["']$/g, ''), index: 0 });
  const rest = line.slice(column + key[0].length);
  const value = rest.trimStart();
  return { column: line.length - value.length, value: value.trimEnd(), hasKey: true };
}

/** A dash stands at the column of its list's key or further in. */
function openItem(frames: Frame[], column: number): void {
  while (frames.length > 0 && frames[frames.length - 1].column > column) frames.pop();
  const top = frames.at(-1);
  if (top && top.column === column && top.key === null) top.index += 1;
  else frames.push({ column, key: null, index: 0 });
}

function shut(frames: Frame[], column: number): void {
  while (frames.length > 0 && frames[frames.length - 1].column >= column) frames.pop();
}

const pathOf = (frames: readonly Frame[]): (string | number)[] =>
  frames.map(({ key, index }) => key ?? index);

/** The line of the cursor, up to it. */
function placeIn(reading: Reading, line: string, start: number): PlaceAt {
  const { frames } = reading;
  const offset = start + line.length;
  if (reading.bracket !== null) return inBrackets(frames, `${reading.bracket}\n${line}`, offset);
  const text = (): PlaceAt => ({ path: pathOf(frames), writes: 'text', from: offset, inBrackets: false });
  if (/(^|\s)#/.test(line)) return text();
  if (
    line.trim() !== '' ? isText(reading, line) : reading.textColumn >= 0 && line.length > reading.textColumn
  )
    return text();
  const { column, value, hasKey } = openedBy(reading, line);
  const hasDash = /^\s*-/.test(line);
  if (/^[{[]/.test(value) && flowAt(value) !== null) return inBrackets(frames, line.slice(column), offset);
  if (hasKey) return { path: pathOf(frames), writes: 'value', from: start + column, inBrackets: false };
  if (!hasDash) shut(frames, column);
  return { path: pathOf(frames), writes: hasDash ? 'value' : 'key', from: start + column, inBrackets: false };
}

function inBrackets(frames: readonly Frame[], written: string, offset: number): PlaceAt {
  const flow = flowAt(written);
  if (!flow) return { path: pathOf(frames), writes: 'text', from: offset, inBrackets: true };
  return {
    path: [...pathOf(frames), ...flow.path],
    writes: flow.writes,
    from: offset - (written.length - flow.from),
    inBrackets: true,
    beside: flow.beside,
  };
}
