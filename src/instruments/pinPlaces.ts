/**
 * Numbered pins in one row over a plot: each stands at its own moment. Where they would lie over one another they become
 * one pin for the whole run of numbers ("5-9"), in the middle of their moments.
 */
export interface PinCluster {
  /** Indices of the first and last pin in it. */
  readonly from: number;
  readonly to: number;
  /** Middle and width on the plot. */
  readonly x: number;
  readonly width: number;
}

const ONE_WIDE = 19;
const RUN_WIDE = 47;
const GAP = 2;

const tenth = (value: number): number => Math.round(value * 10) / 10;

function clusterOf(wanted: readonly number[], from: number, to: number, left: number, right: number) {
  const width = from === to ? ONE_WIDE : RUN_WIDE;
  const middle = (wanted[from] + wanted[to]) / 2;
  const x = Math.max(left + width / 2, Math.min(right - width / 2, middle));
  return { from, to, x: tenth(x), width };
}

/** `wanted` in ascending order; a cluster grows until it stands clear of its neighbours. */
export function clusterPins(wanted: readonly number[], left: number, right: number): PinCluster[] {
  const clusters: PinCluster[] = [];
  for (let i = 0; i < wanted.length; i++) {
    let last = clusterOf(wanted, i, i, left, right);
    for (;;) {
      const before = clusters[clusters.length - 1];
      if (!before || before.x + before.width / 2 + GAP <= last.x - last.width / 2) break;
      clusters.pop();
      last = clusterOf(wanted, before.from, last.to, left, right);
    }
    clusters.push(last);
  }
  return clusters;
}
