/** Share of a cell's volume that is liquid, 0..1. */
import type { NetworkCore } from './networkCore';

export function liquidShare(core: NetworkCore, vessel: number, c: number): number {
  const { plan, numbers } = core;
  const iso = plan.isobars[vessel];
  const x = iso.quality(numbers.enthalpy[c]);
  if (x <= 0) return 1;
  if (x >= 1) return 0;
  return ((1 - x) * iso.liquidVolumeM3PerKg) / numbers.volume[c];
}
