/**
 * Steps of plants that a proof may cost: what two cores do in some 20 s, and for each scenario of the library in 6 minutes, at
 * 7 us for a step of a ghost and 13 us for one of a session that is written down (estimates from a loaded machine).
 */
export const budgets = { usual: 3_400_000, library: 1_700_000 } as const;
