/**
 * What a person typed, with a point for a decimal comma. Three figures after a comma are thousands where numbers are
 * written with a point, so those stay as they are, and are refused by whoever reads the number.
 */
import { shownMarks } from './format';

const COMMA = /(\d),(\d+)/g;
const THOUSANDS = 3;

export function decimalPoint(typed: string): string {
  const isComma = shownMarks().decimal === ',';
  return typed.replace(COMMA, (all, before: string, after: string) =>
    isComma || after.length !== THOUSANDS ? `${before}.${after}` : all,
  );
}
