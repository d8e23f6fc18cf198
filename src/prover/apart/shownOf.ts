/** A value as it stands in a proof: JSON has no NaN, and a proof is the same in whatever way it came. */
export const shownOf = (value: number): number | null => (Number.isNaN(value) ? null : value);
