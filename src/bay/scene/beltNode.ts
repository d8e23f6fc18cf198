/** A running belt: short bright ticks that go along the ribbon while the engine turns. */
import { Graphics } from 'pixi.js';
import { type Course, measure, stationAt } from '../../layout/course';
import type { Part, PointMm } from '../../layout/layout';
import { beltEdge } from '../drawing/parts/beltFront';
import { beltSpans } from '../drawing/parts/beltSide';
import { fanPlace } from '../drawing/parts/fan';
import { isFan } from '../drawing/parts/isFan';
import type { SceneContext, SceneNode } from './sceneNode';

const TICK_PITCH_MM = 46;
const TICK_MM = 13;
/** Round the mouth of a fan. */
const RIM_MM = 24;
/** Speed on screen at 1,000 rpm, mm/s: slow enough to be followed. */
const SPEED_MM_PER_S = 190;

export function beltNode(context: SceneContext, part: Part): SceneNode {
  const view = new Graphics();
  const ways = waysOf(part);
  const fans = context.layout.parts.filter((other) => isFan(other) && other.z > part.z);
  let rpm = 0;
  let shift = 0;
  const draw = (): void => {
    view.clear();
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
