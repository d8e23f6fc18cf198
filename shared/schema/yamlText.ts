/**
 * What a text may be at all, looked at before anything is parsed: not too big, no line and no nesting too long for a person,
 * only letters that can be seen. So no file, however it was made, keeps the reader busy.
 */
import { YamlError } from './readYaml.ts';

export const MOST_BYTES = 256 * 1024;
export const MOST_LINES = 6_000;
export const MOST_IN_LINE = 8_000;
export const MOST_DEPTH = 32;

/** Controls but for tab and line end, marks of byte order, what turns the direction of writing, and what stands for a lost letter. */
const UNSEEN: readonly (readonly [from: number, to: number])[] = [
  [0x0000, 0x0008],
  [0x000b, 0x000c],
  [0x000e, 0x001f],
  [0x007f, 0x009f],
  [0x2028, 0x202e],
  [0x2066, 0x2069],
  [0xd800, 0xdfff],
  [0xfeff, 0xfeff],
  [0xfffd, 0xffff],
];

/** Where the first letter stands that a person could not see; -1 where all can be seen. Halves of letters are none. */
export function unseenIn(text: string): number {
  for (let at = 0; at < text.length; at++) {
    const code = text.codePointAt(at) as number;
    if (code >= 0x20 && code < 0x7f) continue;
    if (UNSEEN.some(([from, to]) => code >= from && code <= to)) return at;
    if (code > 0xffff) at += 1;
  }
  return -1;
}

/** The text without the mark of byte order it may begin with. */
export const withoutMark = (text: string): string => (text.startsWith('\ufeff') ? text.slice(1) : text);

/** A line that ends in a carriage return alone ends all the same; every letter stays where it stands. */
export const withLineEnds = (text: string): string => text.replace(/\r(?!\n)/g, '\n');

/** Throws `YamlError`; `text` is without its mark of byte order. */
export function refuseText(file: string, text: string): void {
  if (text.length > MOST_BYTES || new TextEncoder().encode(text).length > MOST_BYTES)
    throw new YamlError(
      `${file}:1:1`,
      'too-big',
      `the file is over ${MOST_BYTES / 1024} KiB; no lesson needs that`,
    );
  const lines = text.split('\n');
  if (lines.length > MOST_LINES)
    throw new YamlError(`${file}:${MOST_LINES + 1}:1`, 'too-long', `the file has over ${MOST_LINES} lines`);
  for (const [at, line] of lines.entries()) refuseLine(file, at + 1, line);
}

function refuseLine(file: string, number: number, line: string): void {
  const place = `${file}:${number}`;
  if (line.length > MOST_IN_LINE)
    throw new YamlError(
      `${place}:${MOST_IN_LINE + 1}`,
      'line-too-long',
      `a line of over ${MOST_IN_LINE} letters`,
    );
  const unseen = unseenIn(line);
  if (unseen >= 0) {
    const code = line.charCodeAt(unseen).toString(16).padStart(4, '0').toUpperCase();
    const hint = ['0000', 'FFFD', '001B'].includes(code) ? '; save the file as UTF-8' : '';
    throw new YamlError(
      `${place}:${unseen + 1}`,
      'unseen-letter',
      `a letter that cannot be seen (U+${code})${hint}`,
    );
  }
  const indent = /^[ ]*\t/.exec(line);
  if (indent && line.trim() !== '' && !line.trim().startsWith('#'))
    throw new YamlError(
      `${place}:${indent[0].length}`,
      'tab',
      'a tab before the first word; indent with spaces',
      { at: { line: number, column: indent[0].length, length: 1 }, to: '  ' },
    );
  if (deepest(line) > MOST_DEPTH) throw new YamlError(`${place}:1`, 'too-deep', TOO_DEEP);
}

export const TOO_DEEP = `nested over ${MOST_DEPTH} deep`;

/** Brackets and list marks of one line, one in the other. */
function deepest(line: string): number {
  let most = /^\s*(?:[-?:] +)*/.exec(line)?.[0].replace(/[^-?:]/g, '').length ?? 0;
  let open = 0;
  for (const letter of line) {
    if (letter === '[' || letter === '{') open += 1;
    if (letter === ']' || letter === '}') open = Math.max(0, open - 1);
    most = Math.max(most, open);
  }
  return most;
}
