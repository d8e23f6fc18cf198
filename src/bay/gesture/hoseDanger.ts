/**
 * What a hose would meet where it lies now: each stretch of it in a fan's mouth, in a belt's run or on hot metal. Looked
 * at while it is led, so that the hand is told before it lets go.
 */
import { distance } from '../../layout/course';
import type { Hazard, Layout, PointMm, Zone } from '../../layout/layout';
import { zoneAt } from '../../layout/zones';

export interface HoseDanger {
  readonly zone: string;
  readonly hazard: Hazard;
  /** Its way through the zone. */
  readonly stretch: readonly PointMm[];
}

/** Step at which the hose is looked at: as fine as its route is read. */
const SAMPLE_MM = 8;

/** Stretches in danger, from the coupler to the gauge edge; a zone left and met again shows twice. */
export function dangersOf(layout: Layout, points: readonly PointMm[]): HoseDanger[] {
  const found: { readonly zone: Zone; readonly stretch: PointMm[] }[] = [];
  let inside: Zone | null = null;
  for (const point of walk(points)) {
    const zone = zoneAt(layout, point);
    if (zone?.hazard && zone !== inside) found.push({ zone, stretch: [] });
    inside = zone?.hazard ? zone : null;
    if (inside) found[found.length - 1].stretch.push(point);
  }
  return found.flatMap(({ zone: { id, hazard }, stretch }) =>
    hazard ? [{ zone: id, hazard, stretch }] : [],
  );
}

function* walk(points: readonly PointMm[]): Generator<PointMm> {
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    const steps = Math.max(1, Math.ceil(distance(a, b) / SAMPLE_MM));
    for (let k = i === 1 ? 0 : 1; k <= steps; k++)
      yield [a[0] + ((b[0] - a[0]) * k) / steps, a[1] + ((b[1] - a[1]) * k) / steps];
  }
}
