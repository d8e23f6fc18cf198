/** A way out of the loop at a place: nothing for no area. Under vacuum it lets air in. */
import { ROOM, type ValveLink } from '../loop/networkTypes';
import type { LeakPlace } from './leakPlaces';

export function holeAt(place: LeakPlace, areaM2: number): readonly ValveLink[] {
  if (areaM2 <= 0) return [];
  const to = { vessel: ROOM, cell: 0, height: 'bulk' } as const;
  return [{ kind: 'valve', id: `leak:${place.id}`, from: place.port, to, areaM2, opening: 1 }];
}
