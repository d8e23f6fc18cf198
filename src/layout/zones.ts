/**
 * Zones a hose can lie in. A hose's route is an ordered list of zone ids: read from the hanging chain when it is let
 * go, or one of the layout's named routes when it is led by keyboard or plan. Hazard zones stand first in the file, so
 * a point in a fan's mouth belongs to the fan and not to the gap behind the radiator.
 */
import { distance } from './course';
import type { Hazard, HoseId, HoseRoute, Layout, PointMm, RectMm, Zone } from './layout';

/** Step at which a polyline is sampled for the zones it passes: finer than the narrowest zone. */
const SAMPLE_MM = 8;

/** The zone that holds the point, or null outside all of them. */
export function zoneAt(layout: Layout, point: PointMm): Zone | null {
  return layout.zones.find((zone) => inRect(zone.rect, point)) ?? null;
}

export function inRect(rect: RectMm, [x, y]: PointMm): boolean {
  return x >= rect[0] && y >= rect[1] && x <= rect[0] + rect[2] && y <= rect[1] + rect[3];
}

/** Ids of the zones a polyline passes, in order, each stay named once. */
export function zonesAlong(layout: Layout, polyline: readonly PointMm[]): string[] {
  const passed: string[] = [];
  for (const point of samples(polyline)) {
    const zone = zoneAt(layout, point);
    if (zone && passed[passed.length - 1] !== zone.id) passed.push(zone.id);
  }
  return passed;
}

function samples(polyline: readonly PointMm[]): PointMm[] {
  const found: PointMm[] = polyline.slice(0, 1);
  for (let i = 1; i < polyline.length; i++) {
    const [a, b] = [polyline[i - 1], polyline[i]];
    const steps = Math.max(1, Math.ceil(distance(a, b) / SAMPLE_MM));
    for (let k = 1; k <= steps; k++)
      found.push([a[0] + ((b[0] - a[0]) * k) / steps, a[1] + ((b[1] - a[1]) * k) / steps]);
  }
  return found;
}

/** What a route would meet: hazards in order of meeting, each once. */
export function hazardsOf(layout: Layout, route: readonly string[]): Hazard[] {
  const met = new Set<Hazard>();
  for (const id of route) {
    const hazard = layout.zones.find((zone) => zone.id === id)?.hazard;
    if (hazard) met.add(hazard);
  }
  return [...met];
}

/** Two zones this near are neighbours: a hose is led from one to the other without lying in a third, mm. */
const NEIGHBOUR_MM = 80;

/**
 * Whether a hose can lie so: from the port, each zone beside the one before, out to the edge where the gauges are.
 * A list that leaves the car by no way a hose could take is not a route.
 */
export function isWay(layout: Layout, portId: string, route: readonly string[]): boolean {
  const port = layout.ports.find((p) => p.id === portId);
  const rects = route.map((id) => layout.zones.find((zone) => zone.id === id)?.rect);
  if (!port || rects.length === 0) return false;
  const last = rects[rects.length - 1];
  if (!last || last[0] > layout.edge.x + 1) return false;
  const stops: (RectMm | undefined)[] = [[port.at[0], port.at[1], 0, 0], ...rects];
  return stops.every((rect, i) => i === 0 || areNeighbours(stops[i - 1], rect));
}

function areNeighbours(a: RectMm | undefined, b: RectMm | undefined): boolean {
  if (!a || !b) return false;
  const gapX = Math.max(a[0] - (b[0] + b[2]), b[0] - (a[0] + a[2]));
  const gapY = Math.max(a[1] - (b[1] + b[3]), b[1] - (a[1] + a[3]));
  return gapX <= NEIGHBOUR_MM && gapY <= NEIGHBOUR_MM;
}

/** Named routes of a port, the usual one first. */
export function routesOf(layout: Layout, portId: string): readonly HoseRoute[] {
  return layout.routes.filter((route) => route.port === portId);
}

/** The usual route from a port to the gauge edge. Throws `RangeError` for a port without one. */
export function defaultRoute(layout: Layout, portId: string): readonly string[] {
  const [usual] = routesOf(layout, portId);
  if (!usual) throw new RangeError(`no route for port "${portId}" in layout "${layout.id}"`);
  return usual.through;
}

/** Points a hose led along a route goes by: in each zone the one nearest to its way, from the port to the gauge edge. */
export function wayThrough(
  layout: Layout,
  portId: string,
  hose: HoseId,
  route: readonly string[],
): PointMm[] {
  const port = layout.ports.find((p) => p.id === portId);
  if (!port) throw new RangeError(`no port "${portId}" in layout "${layout.id}"`);
  const end: PointMm = [layout.edge.x, layout.edge[hose]];
  const named = routesOf(layout, portId).find((r) => r.through.join() === route.join());
  if (named?.way) return [port.at, ...named.way, end];
  const way: PointMm[] = [port.at];
  for (const id of route.slice(1)) {
    const zone = layout.zones.find((z) => z.id === id);
    if (zone)
      way.push(nearestInside(zone.rect, towards(way[way.length - 1], end), zone.hazard !== undefined));
  }
  return [...way, end];
}

/** A little under half way on to the edge: a hose makes for where it goes. */
const ON_THE_WAY = 0.45;
const towards = (from: PointMm, to: PointMm): PointMm => [
  from[0] + (to[0] - from[0]) * ON_THE_WAY,
  from[1] + (to[1] - from[1]) * ON_THE_WAY,
];

/** How far inside a zone a hose is led: well into a hazard, so that it lies in it; just over the border elsewhere. */
const WELL_INSIDE_MM = 130;
const JUST_INSIDE_MM = 40;

/** The nearest point of a rectangle, stepped inside it where there is room. */
function nearestInside([x, y, w, h]: RectMm, [px, py]: PointMm, deep: boolean): PointMm {
  const inX = Math.min(w * 0.45, deep ? WELL_INSIDE_MM : JUST_INSIDE_MM);
  const inY = Math.min(h * 0.45, deep ? WELL_INSIDE_MM : JUST_INSIDE_MM);
  return [Math.max(x + inX, Math.min(x + w - inX, px)), Math.max(y + inY, Math.min(y + h - inY, py))];
}
