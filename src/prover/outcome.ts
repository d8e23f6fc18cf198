/** One session played to its end by somebody, as the prover keeps it: how it was scored, and what playing it cost. */
export interface Outcome {
  /** A lazy player, or `solution`: the plan of the scenario's author. */
  readonly player: string;
  readonly seed: number;
  readonly score: number;
  readonly reported: number;
  readonly passed: boolean;
  /** Rules whose breach is critical, where they were broken. */
  readonly critical: readonly string[];
  /** Steps of the plant. */
  readonly steps: number;
}
