/** The joints undone with a place: its own, and of a compressor, which stands between both sides, one on each. */
import type { LeakPlace } from '../faults/leakPlaces';

export function waysAt(places: ReadonlyMap<string, LeakPlace>, place: LeakPlace): readonly LeakPlace[] {
  if (place.id !== 'compressor') return [place];
  const other = [...places.values()].find(
    ({ id, kind, port }) =>
      kind === 'joint' && id.endsWith('-compressor') && port.vessel !== place.port.vessel,
  );
  return other ? [place, other] : [place];
}
