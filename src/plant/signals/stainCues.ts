/** Oil that shows where the loop leaks, by place: a damp patch in the dust. What is in its case is not seen. */
import type { PlantParts } from '../assemblePlant';
import { stainShare } from '../oilStains';
import { seen } from './seen';
import { type Signal, signal } from './signal';

export function stainCues(parts: PlantParts): Signal[] {
  return parts.places.flatMap(({ id, at, isHidden }, index) =>
    isHidden || at === null ? [] : [signal(`stain.${id}`, '1', 'cue', () => seen(stainShare(parts, index)))],
  );
}
