/** What the address asks for: `?scenario=&mode=&seed=&lapse=`, or `?card=1`. */
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

export function freshSeed(): number {
  const numbers = crypto.getRandomValues(new Uint32Array(1));
  return 1 + (numbers[0] % MOST_SEED);
}
