/** How far two suspects are apart at each test, in spreads of a reading. */
import type { Probe } from '../forecast/probe';
import { spreadsApart } from '../forecast/spreadsApart';
import type { Row } from './rowOf';

export const rowsApart = (
  probes: readonly Probe[],
  a: Row,
  b: Row,
  atmospherePa: number,
): readonly number[] =>
  probes.map((probe, at) =>
    spreadsApart(probe, a.values[at], b.values[at], atmospherePa, Math.max(a.wanders[at], b.wanders[at])),
  );
