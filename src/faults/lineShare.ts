/**
 * Open share of a clogging line or drier: down to half a hundredth. Most of a line may be shut before anything shows, so
 * severity goes with the fifth root of what is still open [guess].
 */
const LEAST_OPEN = 0.005;

export function lineShare(severity: number): number {
  const left = (1 - severity) * (1 - severity);
  return LEAST_OPEN + (1 - LEAST_OPEN) * left * left * (1 - severity);
}
