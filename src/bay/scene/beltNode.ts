/**
 * A running belt: short bright ticks that go along the ribbon while the engine turns, and a mark on each wheel that goes
 * round with it: holes in a face that is seen, notches in the flanges of one that stands edge-on.
 */
import { type Course, measure, stationAt } from '../../layout/course';
import type { Part, PointMm } from '../../layout/layout';
import { beltEdge } from '../drawing/parts/beltFront';
import { beltSpans } from '../drawing/parts/beltSide';
import { fanPlace } from '../drawing/parts/fan';
import { isFan } from '../drawing/parts/isFan';
import { K } from '../drawing/solids';
import { Way } from '../ink/way';
import { type WayStroke, WayStrokes } from '../wayStrokes';
import type { SceneContext, SceneNode } from './sceneNode';

const TICK_PITCH_MM = 46;
const TICK_MM = 13;
/** Round the mouth of a fan. */
const RIM_MM = 24;
/** Speed on screen at 1,000 rpm, mm/s: slow enough to be followed. */
const SPEED_MM_PER_S = 190;
const HOLES = 3;
const NOTCHES = 3;
/** How thick a tick and a notch are. */
const [TICK_WIDE_MM, NOTCH_MM] = [2.6, 4] as const;
/** Left ends of a wheel's flanges from its part, where it stands edge-on. */
const FLANGES = [2, 39] as const;

export function beltNode(context: SceneContext, part: Part): SceneNode {
  const view = new WayStrokes();
  const ways = waysOf(part);
  const fans = context.layout.parts.filter((other) => isFan(other) && other.z > part.z).map(mouthOf);
  let rpm = 0;
  let shift = 0;
  const wheels = part.kind === 'belt-front' ? facesOf(part) : [];
  const draw = (): void => {
    const { 'iron-d': hole, 'mill-d': flange, 'rub-h': bright } = context.palette();
    const marks =
      part.kind === 'belt-front' ? inked(holes(), hole, null) : inked(notches(), flange, NOTCH_MM);
    view.strokes = rpm === 0 ? [marks] : [marks, { ...inked(ticks(), bright, TICK_WIDE_MM), alpha: 0.85 }];
  };
  const ticks = (): Way => {
    const path = new Way();
    for (const way of ways) {
      for (let along = shift % TICK_PITCH_MM; along < way.lengthMm; along += TICK_PITCH_MM) {
        const [a, b] = [stationAt(way, along), stationAt(way, along + TICK_MM)];
        if (fans.some((fan) => isBehind(fan, a.x, a.y))) continue;
        path.moveTo(a.x, a.y);
        path.lineTo(b.x, b.y);
      }
    }
    return path;
  };
  const holes = (): Way => {
    const path = new Way();
    for (const [x, y, r] of wheels) {
      for (let i = 0; i < HOLES; i++) {
        const angle = shift / r + (i * 2 * Math.PI) / HOLES;
        const [hx, hy] = [x + Math.cos(angle) * r * 0.5, y + 1 + Math.sin(angle) * r * 0.5 * K];
        if (!fans.some((fan) => isBehind(fan, hx, hy))) dot(path, hx, hy, r * 0.11);
      }
    }
    return path;
  };
  const notches = (): Way => {
    const path = new Way();
    for (const [dy, size] of part.wheels ?? []) {
      for (let i = 0; i < NOTCHES; i++) {
        const angle = (2 * shift) / size + (i * 2 * Math.PI) / NOTCHES;
        if (Math.sin(angle) < 0.1) continue;
        const y = part.at[1] + dy + (Math.cos(angle) * size) / 2.3;
        for (const x of FLANGES) {
          path.moveTo(part.at[0] + x, y);
          path.lineTo(part.at[0] + x + 5, y);
        }
      }
    }
    return path;
  };
  return {
    view,
    show(frame, fresh) {
      const stood = rpm === 0;
      rpm = frame.engineRpm;
      if (fresh || stood !== (rpm === 0)) draw();
    },
    tick(seconds) {
      if (rpm === 0 || context.still) return false;
      shift += (seconds * SPEED_MM_PER_S * rpm) / 1000;
      draw();
      return true;
    },
  };
}

const inked = (way: Way, color: string, width: number | null): WayStroke => ({
  way,
  width,
  color,
  alpha: 1,
});

function dot(path: Way, x: number, y: number, r: number): void {
  path.moveTo(x - r, y);
  path.quadraticTo(x, y - r, x + r, y);
  path.quadraticTo(x, y + r, x - r, y);
  path.closed();
}

/** Middle and radius of each wheel that faces the front. */
const facesOf = (part: Part): (readonly [number, number, number])[] =>
  (part.wheels ?? []).map(([dx, z, r]) => [part.at[0] + dx, part.at[1] - z * K, r] as const);

type Mouth = ReturnType<typeof mouthOf>;

function mouthOf(fan: Part) {
  const place = fanPlace(fan);
  return { ...place, top: fan.kind === 'fan-belt' ? place.y : fan.at[1] };
}

/** A fan stands before the belt: what runs behind its mouth, its shroud or what is before that is not seen. */
function isBehind({ x, y, r, squash, width, top }: Mouth, atX: number, atY: number): boolean {
  if (atY > top && Math.abs(atX - x) < width / 2) return true;
  const [u, v] = [(atX - x) / (r + RIM_MM), (atY - y) / ((r + RIM_MM) * squash)];
  return u * u + v * v < 1;
}

function waysOf(part: Part): Course[] {
  if (part.kind === 'belt-front') return [measure([...beltEdge(part), beltEdge(part)[0]])];
  return beltSpans(part).map(([x, from, to]) =>
    measure([
      [x, from],
      [x, to],
    ] as readonly PointMm[]),
  );
}
