/** What a car has that can be repaired or renewed by name: its parts and lines. */
import type { Layout } from './layout';

export const placesOf = ({ parts, lines }: Layout): ReadonlySet<string> =>
  new Set([...parts, ...lines].map(({ id }) => id));
