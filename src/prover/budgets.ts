/**
 * Steps of plants that a proof may cost: what two cores step in some 20 s, and of a library in six minutes, at 20 us a step.
 * A step takes 7 to 9 us (a warm ghost alone) to 35 (a whole proof, cold, on a busy machine); at the 10,000 x real time once
 * asked of the loop it would take 2. The first bay is always done; what no longer fits after it is left out and said.
 */
export const budgets = { usual: 2_000_000, library: 900_000 } as const;
