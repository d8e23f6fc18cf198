/**
 * Steps of plants that a proof may cost. At the 10,000 x real time once asked of the loop, 2 us a step, they would be some
 * 4 s of two cores; a step takes 9 us (a ghost alone on a quiet core) to 25 us (all of it, two threads side by side), so a
 * proof takes a minute or two. What no longer fits is left out and said.
 */
export const budgets = { usual: 3_400_000, library: 1_700_000 } as const;
