/** What a person meant who wrote a plain number as a text: `60%` is 0.6, `25 min` is 25, `0,6` is 0.6. */

const AS_TEXT = /^(-?\d*[.,]?\d+)\s*(%|min|mins|minutes|times)?$/;
const DIGITS = 6;

/** Undefined where no number is near. */
export function numberMeant(given: unknown): string | undefined {
  const [, figures, behind] = (typeof given === 'string' && AS_TEXT.exec(given.trim())) || [];
  if (figures === undefined) return undefined;
  const value = Number(figures.replace(',', '.'));
  return String(Number((behind === '%' ? value / 100 : value).toFixed(DIGITS)));
}

/** The one of `known` that is this number with something behind it: 10 is `10 s`. */
export function withUnit(given: unknown, known: readonly string[]): string | undefined {
  const fit = typeof given === 'number' ? known.filter((one) => one.startsWith(`${given} `)) : [];
  return fit.length === 1 ? fit[0] : undefined;
}
