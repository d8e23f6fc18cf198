/** A quantity as text, number then unit (`620 g`). Which unit fits is checked with the quantity's kind. */
import { z } from 'zod';
import { parseQuantity, QuantityError } from '../../src/units/quantity';
import type { QuantityKind } from '../../src/units/unitTable';

export function quantity(
  kind: QuantityKind,
  range: { readonly min: number; readonly max: number },
): z.ZodType<string> {
  const checked = z.unknown().superRefine((given, context) => {
    const say = (message: string): void => context.addIssue({ code: 'custom', message, input: given });
    if (typeof given === 'number') return say(`${given} needs a unit; it is a ${kind}`);
    if (typeof given !== 'string') return say(`expected a ${kind}, a number with its unit`);
    try {
      const si = parseQuantity(given, kind);
      if (si < range.min || si > range.max) say(`"${given}" is outside what is allowed here`);
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
      say(error.message);
    }
  });
  return checked.meta({ quantity: kind, ...range }) as unknown as z.ZodType<string>;
}
