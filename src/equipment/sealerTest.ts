/**
 * Leak sealer: what the test on a port tells, how long it takes, and what a recovery machine's valves and filter bear. The test
 * lets gas through a fine bore for three minutes, which sealer closes (common practice, no source); amounts are guesses.
 */
export const SEALER = { testS: 180, seenKg: 0.5e-3, foulsKg: 0.2e-3 } as const;
