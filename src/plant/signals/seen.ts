/** A share as an eye has it: 0, 1/8 .. 1. */
const EIGHTHS = 8;

export function seen(share: number): number {
  return Math.max(0, Math.min(EIGHTHS, Math.round(EIGHTHS * share))) / EIGHTHS;
}
