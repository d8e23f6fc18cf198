/** The letter a port's cap shows in the drill: its own side's, or the other's; null where it shows none. */
import type { DrillBay } from './drill';

/** A fitting that is not the loop's is capped as one of the low side. */
export function capLetter(bay: DrillBay, portId: string): 'L' | 'H' | null {
  const port = bay.ports.find(({ id }) => id === portId);
  if (port?.cap !== 'letter' && port?.cap !== 'swapped') return null;
  return (port.side === 'high') === (port.cap === 'letter') ? 'H' : 'L';
}
