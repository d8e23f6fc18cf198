/** Whether a lane of the plot stands still between two moments: then the wait may be cut short. */
import type { Lane } from './TimePlot';

/** What moves less than this share of its whole range counts as standing still. */
const FLAT_SHARE = 0.06;

export function isFlat(lane: Lane, fromS: number, toS: number): boolean {
  const whole = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const part = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < lane.values.length; i++) {
    if (!Number.isFinite(lane.values[i])) continue;
    const inside = lane.seconds[i] >= fromS && lane.seconds[i] <= toS;
    for (const span of inside ? [whole, part] : [whole]) {
      span[0] = Math.min(span[0], lane.values[i]);
      span[1] = Math.max(span[1], lane.values[i]);
    }
  }
  return !(part[1] - part[0] > FLAT_SHARE * (whole[1] - whole[0]));
}
