/**
 * For how long a ghost is put through a stage. Ice, water and a way out go on changing a car for a quarter of an hour; any
 * other ghost is taken to show at the end what it shows once it has settled, and is lived no longer than that.
 */
import { causesIn, type GhostSpec } from '../../suspects/causes';
import type { Stage } from './stages';

const GOES_ON: ReadonlySet<string> = new Set([
  ...['moisture', 'coil-iced', 'cabin-filter-blocked', 'coil-air-low', 'leak'],
]);

export function secondsOf(stage: Stage, { cause, both }: GhostSpec): number {
  const causes = both ? both.map((one) => one.cause) : causesIn(cause);
  return causes.some((one) => GOES_ON.has(one)) ? stage.seconds : (stage.settledS ?? stage.seconds);
}
