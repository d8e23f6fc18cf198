/** A quantity as text, number then unit (`620 g`). Which unit fits is checked with the quantity's kind; an issue may carry what was meant. */
import { z } from 'zod';
import { parseQuantity, QuantityError } from '../../src/units/quantity';
import { type QuantityKind, unitsOf } from '../../src/units/unitTable';
import { unitMeant } from './unitMeant.ts';

/** An issue of a quantity says what was meant, given the texts beside it. */
export interface WithMeant {
  readonly params?: { readonly meantBeside?: (beside: readonly string[]) => string | undefined };
}

export function quantity(
  kind: QuantityKind,
  range: { readonly min: number; readonly max: number },
): z.ZodType<string> {
  const checked = z.unknown().superRefine((given, context) => {
    const say = (message: string): void => {
      const meantBeside = (beside: readonly string[]): string | undefined =>
        typeof given === 'string' || typeof given === 'number'
          ? unitMeant(given, kind, range, beside)
          : undefined;
      context.addIssue({ code: 'custom', message, input: given, params: { meantBeside } });
    };
    if (typeof given === 'number') return say(`${given} needs a unit; it is a ${kind}`);
    if (typeof given !== 'string') return say(`expected a ${kind}, a number with its unit`);
    try {
      const si = parseQuantity(given, kind);
      if (si < range.min || si > range.max)
        say(`"${given}" is outside what is allowed here: ${between(kind, range)}`);
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
      say(error.message);
    }
  });
  return checked.meta({ quantity: kind, ...range }) as unknown as z.ZodType<string>;
}

/** Units people write: degrees for kelvins, grams and per cent, kilopascals. */
const SPOKEN: Partial<Readonly<Record<QuantityKind, string>>> = {
  temperature: 'degC',
  mass: 'g',
  ratio: '%',
  time: 'min',
  absolutePressure: 'kPa abs',
};

/** A range in a unit people write: `-10 to 50 degC`. */
export function between(
  kind: QuantityKind,
  { min, max }: { readonly min: number; readonly max: number },
): string {
  const units = unitsOf(kind);
  const name = SPOKEN[kind] ?? Object.keys(units)[0];
  const { factor, shift = 0 } = units[name];
  const shown = (si: number): string => String(Math.round((si / factor - shift) * 1000) / 1000);
  return `${shown(min)} to ${shown(max)} ${name}`;
}
