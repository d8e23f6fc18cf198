/**
 * What the prover can find, by code, with how much it weighs: an error is why a scenario is refused. The bounds are
 * common practice, no source, but for those of the score and of what is proven, which stand where they are used.
 */
export const findingCodes = {
  PRV101: 'error',
  PRV102: 'error',
  PRV103: 'error',
  PRV104: 'error',
  PRV105: 'error',
  PRV106: 'error',
  PRV107: 'warning',
  PRV108: 'warning',
  PRV109: 'warning',
  PRV110: 'warning',
  PRV111: 'warning',
  PRV112: 'warning',
  PRV113: 'warning',
  PRV120: 'error',
} as const;

export type FindingCode = keyof typeof findingCodes;
