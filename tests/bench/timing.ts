/** Timing of short runs: the best one is nearest to a machine with nothing else to do, the middle one is what one gets. */
export interface Timing {
  readonly bestNs: number;
  readonly medianNs: number;
}

/** ns a call over `rounds` runs of `calls` each. Every call gives a number, so that nothing can be left out as unused. */
export function timed(calls: number, rounds: number, call: (index: number) => number): Timing {
  const taken: number[] = [];
  let sum = 0;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    for (let index = 0; index < calls; index++) sum += call(index);
    taken.push(((performance.now() - start) * 1e6) / calls);
  }
  if (Number.isNaN(sum)) throw new Error('a measured call gave no number');
  taken.sort((a, b) => a - b);
  return { bestNs: taken[0], medianNs: taken[rounds >> 1] };
}

/** Two figures, in nanoseconds divided by `unitNs`. */
export function figures(name: string, unit: string, timing: Timing, unitNs = 1): Record<string, number> {
  return {
    [`${name}, ${unit}`]: timing.bestNs / unitNs,
    [`${name}, median, ${unit}`]: timing.medianNs / unitNs,
  };
}
