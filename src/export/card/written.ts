/** Quantities as the card prints them: SI first, the other trade unit behind it. */
import { formatQuantity } from '../../units/format';
import type { Window } from './weatherWindows';

export const mass = (kg: number): string =>
  `${formatQuantity(kg, 'g', 1)} (${formatQuantity(kg, 'oz', 0.1)})`;

export const grams = (kg: number): string => formatQuantity(kg, 'g', 1);

export const temperature = (kelvin: number): string =>
  `${formatQuantity(kelvin, 'degC', 1)} (${formatQuantity(kelvin, 'degF', 1)})`;

export const pressure = (gaugePa: number): string =>
  `${formatQuantity(gaugePa, 'kPa', 10)} (${formatQuantity(gaugePa, 'psi', 1)})`;

export interface Span {
  readonly from: string;
  readonly to: string;
}

/** "260" and "350 kPa": the unit once, in each of the two. */
export const pressureSpans = ({ fromGaugePa, toGaugePa }: Window): readonly Span[] =>
  [
    { unit: 'kPa', step: 10 },
    { unit: 'psi', step: 1 },
  ].map(({ unit, step }) => {
    const [from, to] = [fromGaugePa, toGaugePa].map((pa) => formatQuantity(pa, unit as 'kPa' | 'psi', step));
    return { from: from.split(' ')[0], to };
  });
