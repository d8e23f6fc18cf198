/** Does work that comes in stretches in one go. */
export function toEnd<Result>(work: Generator<void, Result>): Result {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}
