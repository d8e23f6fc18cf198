/**
 * What detector, soap and lamp showed at the place last searched, 0 nothing .. 8; NaN while none has been or a search is
 * under way. Levels that a person hears and sees, so they have no lag, offset or range of an instrument.
 */
import type { SearchDesk } from './searchDesk';

export const SEARCH_CHANNELS = ['detector', 'soap', 'lamp'] as const;

export function searchReading({ shown, ticks, bubbles, glow }: SearchDesk, channel: string): number {
  if (channel === 'detector') return shown.detector ? ticks : Number.NaN;
  if (channel === 'soap') return shown.soap ? bubbles : Number.NaN;
  return channel === 'lamp' && shown.lamp ? glow : Number.NaN;
}
