/** 1 once `value` is over `closes`, 0 once it is under `opens`; between them as before. */
export function latch(was: number, value: number, opens: number, closes: number): number {
  return value < opens ? 0 : value > closes ? 1 : was;
}
