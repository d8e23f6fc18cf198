/**
 * Steps of plants that a proof may cost. They aim at 20 s on two cores, and for the library at 6 minutes, with 7 us for a step
 * of a ghost and 13 us for one of a session that is written down; those are guesses, and one scenario measured took 79 s.
 */
export const budgets = { usual: 3_400_000, library: 1_700_000 } as const;
