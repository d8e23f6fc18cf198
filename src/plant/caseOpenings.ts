/** Places beside the loop's own where gas of the evaporator's case comes out, and the share of it that a tip there gets. */
export const CASE_OPENINGS: Readonly<Record<string, number>> = { 'evaporator-drain': 1, 'centre-vent': 0.5 };
