/**
 * What each habit passes of a whole library: every lazy player has to fail at least two thirds of its scenarios. A scenario
 * counts as passed where more than half of the seeds were.
 */
import { type FindingCode, findingCodes } from './findingCodes';
import type { Proof, ProofFinding } from './proof';

export interface LibraryLuck {
  readonly player: string;
  readonly of: number;
  /** Ids of scenarios. */
  readonly passed: readonly string[];
}

const PASSED_SHARE = 1 / 3;
const CODE: FindingCode = 'PRV120';

export function libraryLuck(proofs: readonly Proof[]): readonly LibraryLuck[] {
  const players = [...new Set(proofs.flatMap(({ luck }) => luck.map(({ player }) => player)))];
  return players.map((player) => {
    const met = proofs.filter(({ luck }) => luck.some((one) => one.player === player));
    const passed = met.filter(({ luck }) =>
      luck.some((one) => one.player === player && 2 * one.passed.length > one.seeds.length),
    );
    return { player, of: met.length, passed: passed.map(({ scenario }) => scenario) };
  });
}

export const luckFindings = (luck: readonly LibraryLuck[]): readonly ProofFinding[] =>
  luck
    .filter(({ passed, of }) => passed.length > PASSED_SHARE * of)
    .map(({ player, passed, of }) => ({
      code: CODE,
      level: findingCodes[CODE],
      path: [],
      values: { player, passed: passed.length, of },
    }));
