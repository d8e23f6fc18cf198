/** Figures in a text that follow their reader's units: a number with its unit in braces, `{290 kPa}`, `{4000 micron abs}`. */
import { parseQuantity, QuantityError } from './quantity';
import type { QuantityKind } from './unitTable';

/** A gauge pressure, an absolute one, a temperature, a mass. */
const FOLLOWING = [
  'gaugePressure',
  'absolutePressure',
  'temperature',
  'mass',
] as const satisfies QuantityKind[];

export interface Figure {
  readonly kind: (typeof FOLLOWING)[number];
  readonly valueSi: number;
  /** As the author wrote it. */
  readonly number: string;
  readonly unit: string;
}

const MARK = /\{([^{}]*)\}/g;

/** Null for what is no quantity of a kind that readers choose units for. */
export function figureOf(text: string): Figure | null {
  const [number = '', unit = ''] = text.trim().split(/\s+(.*)/s);
  for (const kind of FOLLOWING) {
    try {
      return { kind, valueSi: parseQuantity(text, kind), number, unit };
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
    }
  }
  return null;
}

/** The text as it is read, each figure written by `write`; braces around anything else stay. */
export function tellFigures(text: string, write: (figure: Figure) => string): string {
  return text.replace(MARK, (mark, within: string) => {
    const figure = figureOf(within);
    return figure === null ? mark : write(figure);
  });
}

/** What stands in braces, and whether it is a figure. */
export const marksIn = (text: string): { readonly mark: string; readonly isFigure: boolean }[] =>
  [...text.matchAll(MARK)].map(([mark, within]) => ({ mark, isFigure: figureOf(within) !== null }));
