/** The bay knows hoses by what they are for (low, high, charging); the core by which tool they belong to. */
import type { HoseId as BayHose } from '../layout/layout';

const PAIRS: readonly (readonly [core: string, bay: BayHose])[] = [
  ['charging', 'charging'],
  ['gauge-low', 'low'],
  ['gauge-high', 'high'],
  ['utility', 'utility'],
];

export const bayHoseOf = (core: string): BayHose | null => PAIRS.find(([id]) => id === core)?.[1] ?? null;

export const coreHoseOf = (bay: BayHose): string => PAIRS.find(([, id]) => id === bay)?.[0] ?? bay;
