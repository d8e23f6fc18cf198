/**
 * What lies under a pointer, in millimetres of the bay. Hit areas never shrink below 44 screen pixels; where two overlap
 * the nearest middle wins. Gear in the hand's reach comes first, then ports, then lines and parts.
 */
import { type Course, courseOf, distance, nearestStation } from '../../layout/course';
import type { Layout, PointMm } from '../../layout/layout';
import { loopLines } from '../../layout/trace';
import { inRect } from '../../layout/zones';
import { MAT, SCALE } from '../itemIds';
import type { Under } from './handGesture';

/** Something of the trainee's own that lies in the bay. */
export interface Gear extends Under {
  readonly at: PointMm;
  /** Half its drawn size, mm. */
  readonly r: number;
}

/** Least half side of a hit area, CSS pixels. */
export const LEAST_HALF_PX = 22;
const PORT_R_MM = 26;

export interface Scene {
  readonly layout: Layout;
  readonly gear: readonly Gear[];
  readonly mmPerPx: number;
}

export function underPointer(scene: Scene, at: PointMm): Under | null {
  return (
    nearestOf(
      scene.gear.filter(({ id }) => id !== SCALE),
      scene,
      at,
    ) ??
    portUnder(scene, at) ??
    lineUnder(scene, at, 6) ??
    partUnder(scene, at)
  );
}

/** Where something let go at this point would land: a port, gear it goes on, the scale, the mat, or nowhere. */
export function dropTarget(scene: Scene, at: PointMm, valid: readonly string[] = []): string | null {
  const port = portUnder(scene, at);
  if (port) return port.id;
  const onto = nearestOf(
    scene.gear.filter(({ id }) => id === SCALE || valid.includes(id)),
    scene,
    at,
  );
  if (onto) return onto.id;
  return inRect(scene.layout.mat.rect, at) ? MAT : null;
}

const reach = (scene: Scene, r: number): number => Math.max(r, LEAST_HALF_PX * scene.mmPerPx);

function nearestOf(things: readonly Gear[], scene: Scene, at: PointMm): Under | null {
  let best: { readonly thing: Gear; readonly away: number } | null = null;
  for (const thing of things) {
    const away = distance(thing.at, at);
    if (away < reach(scene, thing.r) && (!best || away < best.away)) best = { thing, away };
  }
  return best && { id: best.thing.id, takeable: best.thing.takeable, from: best.thing.from };
}

function portUnder(scene: Scene, at: PointMm): Under | null {
  const ports = scene.layout.ports.map(
    (port): Gear => ({ id: port.id, takeable: false, from: null, at: port.at, r: PORT_R_MM }),
  );
  return nearestOf(ports, scene, at);
}

const courses = new WeakMap<Layout, readonly (readonly [string, Course, number])[]>();

function coursesOf(layout: Layout): readonly (readonly [string, Course, number])[] {
  const found = courses.get(layout);
  if (found) return found;
  const made = loopLines(layout).map(
    (line) => [line.id, courseOf(line.way, line.fillet), (line.diameterMm * layout.pipeScale) / 2] as const,
  );
  courses.set(layout, made);
  return made;
}

function lineUnder(scene: Scene, at: PointMm, roomMm: number): Under | null {
  let best: { readonly id: string; readonly away: number } | null = null;
  for (const [id, course, half] of coursesOf(scene.layout)) {
    const { awayMm } = nearestStation(course, at);
    if (awayMm < half + roomMm && (!best || awayMm < best.away)) best = { id, away: awayMm };
  }
  return best && { id: best.id, takeable: false, from: null };
}

/** The smallest part whose area holds the point; a line within a finger's width where there is none. */
function partUnder(scene: Scene, at: PointMm): Under | null {
  const holding = scene.layout.parts.filter((part) => part.name && part.hit && inRect(part.hit, at));
  holding.sort((a, b) => (a.hit?.[2] ?? 0) * (a.hit?.[3] ?? 0) - (b.hit?.[2] ?? 0) * (b.hit?.[3] ?? 0));
  const [part] = holding;
  if (part) return { id: part.id, takeable: false, from: null };
  return lineUnder(scene, at, LEAST_HALF_PX * scene.mmPerPx);
}
