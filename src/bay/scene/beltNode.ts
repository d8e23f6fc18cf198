/**
 * A running belt: short bright ticks that go along the ribbon while the engine turns, and a mark on each wheel that goes
 * round with it: holes in a face that is seen, notches in the flanges of one that stands edge-on.
 */
import { Graphics } from 'pixi.js';
import { type Course, measure, stationAt } from '../../layout/course';
import type { Part, PointMm } from '../../layout/layout';
import { beltEdge } from '../drawing/parts/beltFront';
import { beltSpans } from '../drawing/parts/beltSide';
import { fanPlace } from '../drawing/parts/fan';
import { isFan } from '../drawing/parts/isFan';
import { K } from '../drawing/solids';
import type { SceneContext, SceneNode } from './sceneNode';

const TICK_PITCH_MM = 46;
const TICK_MM = 13;
/** Round the mouth of a fan. */
const RIM_MM = 24;
/** Speed on screen at 1,000 rpm, mm/s: slow enough to be followed. */
const SPEED_MM_PER_S = 190;
const HOLES = 3;
const NOTCHES = 3;
/** Left ends of a wheel's flanges from its part, where it stands edge-on. */
const FLANGES = [2, 39] as const;

export function beltNode(context: SceneContext, part: Part): SceneNode {
  const view = new Graphics();
  const ways = waysOf(part);
  const fans = context.layout.parts.filter((other) => isFan(other) && other.z > part.z);
  let rpm = 0;
  let shift = 0;
  const wheels = part.kind === 'belt-front' ? facesOf(part) : [];
  const draw = (): void => {
    view.clear();
    if (part.kind === 'belt-front') holes();
    else notches();
    if (rpm === 0) return;
    for (const way of ways) {
      for (let along = shift % TICK_PITCH_MM; along < way.lengthMm; along += TICK_PITCH_MM) {
        const [a, b] = [stationAt(way, along), stationAt(way, along + TICK_MM)];
        if (fans.some((fan) => isBehind(fan, a.x, a.y))) continue;
        view.moveTo(a.x, a.y).lineTo(b.x, b.y);
      }
    }
    view.stroke({ color: context.palette()['rub-h'], width: 2.6, alpha: 0.85, cap: 'round' });
  };
  const holes = (): void => {
    for (const [x, y, r] of wheels) {
      for (let i = 0; i < HOLES; i++) {
        const angle = shift / r + (i * 2 * Math.PI) / HOLES;
        const [hx, hy] = [x + Math.cos(angle) * r * 0.5, y + 1 + Math.sin(angle) * r * 0.5 * K];
        if (!fans.some((fan) => isBehind(fan, hx, hy))) dot(hx, hy, r * 0.11);
      }
    }
    view.fill({ color: context.palette()['iron-d'] });
  };
  const dot = (x: number, y: number, r: number): void => {
    view
      .moveTo(x - r, y)
      .quadraticCurveTo(x, y - r, x + r, y)
      .quadraticCurveTo(x, y + r, x - r, y)
      .closePath();
  };
  const notches = (): void => {
    for (const [dy, size] of part.wheels ?? []) {
      for (let i = 0; i < NOTCHES; i++) {
        const angle = (2 * shift) / size + (i * 2 * Math.PI) / NOTCHES;
        if (Math.sin(angle) < 0.1) continue;
        const y = part.at[1] + dy + (Math.cos(angle) * size) / 2.3;
        for (const x of FLANGES) view.moveTo(part.at[0] + x, y).lineTo(part.at[0] + x + 5, y);
      }
    }
    view.stroke({ color: context.palette()['mill-d'], width: 4, cap: 'round' });
  };
  return {
    view,
    show(frame) {
      rpm = frame.engineRpm;
      draw();
    },
    tick(seconds) {
      if (rpm === 0 || context.still) return false;
      shift += (seconds * SPEED_MM_PER_S * rpm) / 1000;
      draw();
      return true;
    },
  };
}

/** Middle and radius of each wheel that faces the front. */
const facesOf = (part: Part): (readonly [number, number, number])[] =>
  (part.wheels ?? []).map(([dx, z, r]) => [part.at[0] + dx, part.at[1] - z * K, r] as const);

/** A fan stands before the belt: what runs behind its mouth, its shroud or what is before that is not seen. */
function isBehind(fan: Part, atX: number, atY: number): boolean {
  const { x, y, r, squash, width } = fanPlace(fan);
  const top = fan.kind === 'fan-belt' ? y : fan.at[1];
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
