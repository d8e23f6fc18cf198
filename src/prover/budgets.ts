/**
 * Steps of plants that a proof may cost. At the 10,000 x real time once asked of the loop, 2 us a step, they would be some
 * 4 s of two cores; a step takes 7 to 9 us (a warm ghost alone) to some 30 (a whole proof, two cold threads), and one proof
 * measured took 63 s. What no longer fits is left out and said.
 */
export const budgets = { usual: 3_400_000, library: 1_700_000 } as const;
