/** What the address asks for: `?scenario=&mode=&seed=&lapse=`, or `?card=1`, or `?drill=1&seed=&level=`, or `?workshop=1`. */
import type { DrillLevel } from '../layout/drill/drill';
import type { Lapse } from '../panels/sessionModel';
import type { Mode } from '../session/corePort';

export interface Asked {
  readonly scenarioId: string;
  readonly mode: Mode;
  readonly seed: number;
  /** Speed once the job has begun. */
  readonly lapse: Lapse;
}

const MODES: readonly Mode[] = ['explore', 'practice', 'assessed'];
const LAPSES: readonly Lapse[] = [0, 1, 10, 60, 240];
const MOST_SEED = 999_999;

/** Null where the address names no scenario. Anything it gets wrong is as if it were left out. */
export function readAddress(search: string): Asked | null {
  const query = new URLSearchParams(search);
  const scenarioId = query.get('scenario');
  if (scenarioId === null || scenarioId === '') return null;
  const seed = Number(query.get('seed') ?? 1);
  const lapse = query.get('lapse');
  return {
    scenarioId,
    mode: MODES.find((mode) => mode === query.get('mode')) ?? 'practice',
    seed: Number.isInteger(seed) && seed >= 0 && seed <= MOST_SEED ? seed : 1,
    lapse: LAPSES.find((one) => lapse !== null && String(one) === lapse) ?? 1,
  };
}

export function writeAddress({ scenarioId, mode, seed, lapse }: Asked): string {
  const query = new URLSearchParams({ scenario: scenarioId, mode, seed: String(seed) });
  if (lapse !== 1) query.set('lapse', String(lapse));
  return `?${query}`;
}

export const CARD_ADDRESS = '?card=1';

/** The car card, which is no session. */
export const asksForCard = (search: string): boolean => new URLSearchParams(search).get('card') === '1';

export const WORKSHOP_ADDRESS = '?workshop=1';

/** The workshop, where scenarios are written. */
export const asksForWorkshop = (search: string): boolean =>
  new URLSearchParams(search).get('workshop') === '1';

export interface DrillAsked {
  /** The bay to begin with; null for a fresh one. */
  readonly seed: number | null;
  readonly level: DrillLevel | null;
}

const DRILL_LEVELS: readonly DrillLevel[] = [1, 2, 3, 4];

/** The port drill, which is no session either; null where it is not asked for. */
export function drillAsked(search: string): DrillAsked | null {
  const query = new URLSearchParams(search);
  if (query.get('drill') !== '1') return null;
  const seed = Number(query.get('seed'));
  return {
    seed: Number.isInteger(seed) && seed >= 1 && seed <= MOST_SEED ? seed : null,
    level: DRILL_LEVELS.find((level) => String(level) === query.get('level')) ?? null,
  };
}

export function freshSeed(): number {
  const numbers = crypto.getRandomValues(new Uint32Array(1));
  return 1 + (numbers[0] % MOST_SEED);
}
