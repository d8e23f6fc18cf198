/**
 * How far two cars are apart over several tests, in spreads: each channel counted once, in the stage that tells most.
 *
 *   sqrt(sum of squares)
 */
import type { Probe } from '../forecast/probe';

/**
 * From here on two cars count as told apart: of two alike before, that brings one to a share of 0.88 on the mean; 0.8 is
 * proven.
 */
export const PARTED = 2;

/** `spreads` by probe. */
export function spreadsTogether(probes: readonly Probe[], spreads: readonly number[]): number {
  const most = new Map<string, number>();
  probes.forEach(({ channel }, at) => {
    most.set(channel, Math.max(spreads[at], most.get(channel) ?? 0));
  });
  return Math.sqrt([...most.values()].reduce((sum, one) => sum + one * one, 0));
}
