import type { Pair } from './apartTable';

/** One way to the cause: the player that asks, each time, the test that can tell most for what it costs. */
export interface KnowTrial {
  /** What was read together, as ids of tests. */
  readonly tests: readonly string[];
  /** Doubt it took away, in nats. */
  readonly nats: number;
  /** Share of what was then thought likeliest. */
  readonly share: number;
}

export interface KnowRun {
  readonly seed: number;
  /** Whether something was proven, to the share that `suspects/proven` asks. */
  readonly reached: boolean;
  /** A cause, `nothing-wrong`, or two causes with a `+` between. */
  readonly claimed: string;
  readonly share: number;
  readonly charge: 'charge' | 'do-not-charge';
  /** Whether it asks for the work that what is hidden asks for, or is `alike`. */
  readonly right: boolean;
  /** What is hidden and what is claimed, where the work differs and nothing on the bench tells the two cars apart. */
  readonly alike: Pair | null;
  /** On the session's clock. */
  readonly minutes: number;
  /** By the prices of `suspects/testCosts`. */
  readonly costMinutes: number;
  /** What it said, as a person at the text twin would. */
  readonly lines: readonly string[];
  readonly trials: readonly KnowTrial[];
  /** Steps of plants: the session's, of the ghosts that lived along, and of forecasts of cars that the table has no row for. */
  readonly steps: number;
}
