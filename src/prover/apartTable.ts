/** Suspects against tests: what each would show, and who cannot be told from whom with what the bench has. */
export interface TestOf {
  readonly id: string;
  readonly tool: string;
  /** In which the car is read: at rest, running, and so on. */
  readonly state: string;
  readonly unit: string;
  readonly costMinutes: number;
  readonly isOnBench: boolean;
}

export interface ApartRow {
  readonly cause: string;
  readonly severity: number;
  /** How many of the table's states it was read in, from the first. */
  readonly stages: number;
  /** By test; null where it has nothing to show or was not read. */
  readonly shows: readonly (number | null)[];
}

/** Two causes that no test of the bench parts. */
export interface Pair {
  readonly a: string;
  readonly b: string;
  /** Whether the two ask for different work. */
  readonly decisionDiffers: boolean;
  /** What parts them best on the bench, and by how many spreads of a reading. */
  readonly best: { readonly test: string; readonly spreads: number } | null;
  /** The nearest reading that would part them, with what each shows, null where that is nothing; null where none does. */
  readonly wouldTell: {
    readonly test: string;
    readonly tool: string;
    readonly spreads: number;
    readonly shows: readonly [a: number | null, b: number | null];
  } | null;
}

export interface ApartTable {
  readonly seed: number;
  /** In their order. */
  readonly states: readonly string[];
  readonly tests: readonly TestOf[];
  readonly rows: readonly ApartRow[];
  readonly pairs: readonly Pair[];
  readonly steps: number;
}
