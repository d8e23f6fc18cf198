/**
 * How high a hose hangs over what it passes: a weighted string over steps. Between its ends it sags, and it lies on
 * fender, mat and engine where it would sink into them. Heights decide its shadow and nothing else.
 *
 * Each point hangs its own weight below the mean of its neighbours, h = (h- + h+)/2 - w, or stands on what is under it,
 * whichever is higher (Gauss-Seidel). Heights of car and hand are [guess].
 */
import type { Layout, PointMm, RectMm } from '../../layout/layout';
import { inRect } from '../../layout/zones';

/** Over the floor of the bay, mm. */
const FENDER_MM = 92;
const ENGINE_MM = 64;
const LINES_MM = 22;
/** The end of a hose on a port, and of one in the hand. */
export const ON_PORT_MM = 96;
export const IN_HAND_MM = 168;
/** How far a point hangs below the mean of its neighbours. */
const WEIGHT_MM = 1.15;
const SWEEPS = 36;
/** The least height of a shadow's caster: half the hose. */
const LEAST_MM = 8;

/** Height of what lies under a point. */
export function groundUnder(layout: Layout, [x, y]: PointMm): number {
  const { left, right, firewall, beam } = layout.shell;
  if (x < left || x > right || y < firewall || y > beam) return FENDER_MM;
  return enginesOf(layout).some((rect) => inRect(rect, [x, y])) ? ENGINE_MM : LINES_MM;
}

/** Height of each point over what lies under it, from the coupler to the gauge edge. */
export function drape(layout: Layout, points: readonly PointMm[], headMm: number): number[] {
  const ground = points.map((point) => groundUnder(layout, point));
  const last = points.length - 1;
  const height = ground.map((g, i) => Math.max(g, headMm + ((FENDER_MM - headMm) * i) / Math.max(1, last)));
  height[0] = Math.max(headMm, ground[0]);
  height[last] = ground[last];
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    for (let i = 1; i < last; i++)
      height[i] = Math.max(ground[i], (height[i - 1] + height[i + 1]) / 2 - WEIGHT_MM);
  }
  return height.map((h, i) => Math.max(LEAST_MM, h - ground[i]));
}

const engines = new WeakMap<Layout, readonly RectMm[]>();

function enginesOf(layout: Layout): readonly RectMm[] {
  const found = engines.get(layout);
  if (found) return found;
  const made = layout.parts.flatMap(({ kind, hit }) => (kind.startsWith('engine') && hit ? [hit] : []));
  engines.set(layout, made);
  return made;
}
