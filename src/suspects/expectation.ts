/**
 * What a ghost would have shown at the place and moment of an observation: the lagged truth behind the instrument, within
 * its range, less what zeroing took off; or whether the thing looked at turned. NaN where the ghost has nothing to read.
 */
import { CHANNELS } from '../plant/panel';
import type { Ghost } from './ghost';
import type { Observation } from './observation';

const TRIM_OF = { 'charging-gauge': 'charging', 'low-gauge': 'low', 'high-gauge': 'high' } as const;

/** SI; 1 or 0 for a look. */
export function expected({ parts, plant }: Ghost, seen: Observation): number {
  if (seen.kind === 'look') return plant.value(plant.signalIndex(seen.channel));
  const { panel, desk } = parts;
  const index = CHANNELS.indexOf(seen.instrument);
  const { minimum, maximum } = panel.instruments[index];
  const trim = seen.instrument in TRIM_OF ? desk.trims[TRIM_OF[seen.instrument as keyof typeof TRIM_OF]] : 0;
  return Math.max(minimum, Math.min(maximum, panel.lagged[index] - trim));
}
