/** On which side of the bay a form stands that is about a thing there: never over the thing itself. */
import type { Layout, PointMm } from '../layout/layout';
import { stopsOf } from '../layout/order';

export type FormSide = 'side' | 'side left';

export function formSide(layout: Layout, id: string): FormSide {
  const [left, , width] = layout.view;
  const at = placeOf(layout, id);
  return at && at[0] > left + width / 2 ? 'side left' : 'side';
}

/** A can lies on the mat or in the hand over it. */
function placeOf(layout: Layout, id: string): PointMm | null {
  if (id.startsWith('can-')) return layout.mat.canAt;
  return stopsOf(layout).find((stop) => stop.id === id)?.at ?? null;
}
