/**
 * In what order things are met without a pointer.
 *
 * Tab: the loop in flow order from the compressor, then ports by place (rear to front, then left to right), then the
 * other named parts rear to front. Arrow keys: the nearest thing in that direction, where sideways distance counts
 * double, so that "right" does not jump to the other end of the bay.
 */
import { courseOf, stationAt } from './course';
import type { Layout, PointMm, RectMm } from './layout';
import { middleOf } from './place';
import { loopLines } from './trace';

export type StopKind = 'line' | 'part' | 'port';

/** Something that can be picked: its middle and the area a pointer finds it in. */
export interface Stop {
  readonly id: string;
  readonly kind: StopKind;
  readonly at: PointMm;
  readonly hit: RectMm;
}

export type Arrow = 'up' | 'down' | 'left' | 'right';

/** Half the side of a port's own hit area; screens grow it to 44 px. */
const PORT_HALF_MM = 26;
const LINE_HALF_MM = 20;
/** Parts smaller than this stand in the way of a line's stop; larger ones do not hide it. */
const SMALL_MM2 = 8000;

const known = new WeakMap<Layout, readonly Stop[]>();

/** Everything that can be picked, in Tab order; found once for each layout. */
export function stopsOf(layout: Layout): readonly Stop[] {
  const before = known.get(layout);
  if (before) return before;
  const loop = loopStops(layout);
  const named = new Set(loop.map((stop) => stop.id));
  const stops = [...loop, ...portStops(layout), ...otherParts(layout, named)];
  known.set(layout, stops);
  return stops;
}

function loopStops(layout: Layout): Stop[] {
  const stops: Stop[] = [];
  const lines = [...loopLines(layout)];
  let at = layout.parts.find((part) => part.kind.startsWith('compressor'))?.id;
  while (at !== undefined) {
    if (!stops.some((stop) => stop.id === at)) stops.push(partStop(layout, at));
    const next = lines.findIndex((line) => line.from === at);
    if (next < 0) break;
    const [line] = lines.splice(next, 1);
    stops.push(lineStop(layout, line.id), ...(line.holds ?? []).map((id) => partStop(layout, id)));
    at = line.to;
  }
  return stops;
}

function portStops(layout: Layout): Stop[] {
  return layout.ports
    .map((port): Stop => ({ id: port.id, kind: 'port', at: port.at, hit: square(port.at, PORT_HALF_MM) }))
    .sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0]);
}

function otherParts(layout: Layout, taken: ReadonlySet<string>): Stop[] {
  return layout.parts
    .filter((part) => part.name !== undefined && !taken.has(part.id))
    .map((part) => partStop(layout, part.id))
    .sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0]);
}

function partStop(layout: Layout, id: string): Stop {
  const part = layout.parts.find((p) => p.id === id);
  if (!part) throw new RangeError(`no part "${id}" in layout "${layout.id}"`);
  return { id, kind: 'part', at: middleOf(part), hit: part.hit ?? square(part.at, PORT_HALF_MM) };
}

/** A line is picked at the middle of its clearest run: the station farthest from ports and other refrigerant lines. */
function lineStop(layout: Layout, id: string): Stop {
  const at = clearest(layout, id);
  return { id, kind: 'line', at, hit: square(at, LINE_HALF_MM) };
}

function clearest(layout: Layout, id: string): PointMm {
  const own = layout.lines.find((line) => line.id === id);
  if (!own) throw new RangeError(`no line "${id}" in layout "${layout.id}"`);
  const course = courseOf(own.way, own.fillet);
  const others = obstacles(layout, id);
  let best: { readonly at: PointMm; readonly room: number } | null = null;
  for (let share = 0.12; share < 0.9; share += 0.04) {
    const { x, y } = stationAt(course, share * course.lengthMm);
    if (y < layout.shell.firewall + 20 || (y > layout.shell.beam - 20 && y < layout.shell.beam + 80))
      continue;
    const room = Math.min(100, ...others.map((o) => gap(o, [x, y]))) - Math.abs(share - 0.5) * 20;
    if (!best || room > best.room) best = { at: [x, y], room };
  }
  if (best) return best.at;
  const middle = stationAt(course, course.lengthMm / 2);
  return [middle.x, middle.y];
}

/** What a line's own stop keeps away from: ports, small parts and other refrigerant lines. */
function obstacles(layout: Layout, id: string): PointMm[] {
  const lines = loopLines(layout).filter((line) => line.id !== id);
  const small = layout.parts.filter((part) => part.name && part.hit && part.hit[2] * part.hit[3] < SMALL_MM2);
  return [
    ...layout.ports.map((port) => port.at),
    ...small.map(middleOf),
    ...lines.flatMap((line) => courseOf(line.way, line.fillet).points),
  ];
}

function gap(a: PointMm, b: PointMm): number {
  const dx = a[0] - b[0];
  const dy = a[1] - b[1];
  return Math.sqrt(dx * dx + dy * dy);
}

function square([x, y]: PointMm, half: number): RectMm {
  return [x - half, y - half, 2 * half, 2 * half];
}

/** The nearest stop in a direction, or null at the edge. */
export function neighbour(stops: readonly Stop[], from: Stop, arrow: Arrow): Stop | null {
  let best: { readonly stop: Stop; readonly price: number } | null = null;
  for (const stop of stops) {
    const price = stop.id === from.id ? null : priceOf(from.at, stop.at, arrow);
    if (price !== null && (!best || price < best.price)) best = { stop, price };
  }
  return best?.stop ?? null;
}

/** Distance ahead plus twice the distance aside; null where it is not ahead. */
function priceOf(from: PointMm, to: PointMm, arrow: Arrow): number | null {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const ahead = { up: -dy, down: dy, left: -dx, right: dx }[arrow];
  const aside = Math.abs(arrow === 'up' || arrow === 'down' ? dx : dy);
  return ahead > 4 && aside <= ahead * 2 ? ahead + 2 * aside : null;
}
