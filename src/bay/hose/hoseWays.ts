/** Where a hose lies before anybody touched it: led along its route, or loose from the mat to the gauge edge. */
import type { CoupledHose, HoseId, Layout, PointMm } from '../../layout/layout';
import { wayThrough } from '../../layout/zones';
import { BARB_MM, barbTip, couplerForm } from '../drawing/gear/coupler';
import { rounded } from './chain';

/** Loose couplers lie with their mouth toward the car, their hose leaving toward the gauges. */
export const REST_TURN_DEG = -60;

/** From the barb of a coupler on a port, along the route, to the gauge edge. */
export function ledWay(layout: Layout, hose: HoseId, portId: string, route: readonly string[]): PointMm[] {
  const [port, ...rest] = wayThrough(layout, portId, hose, route);
  const toward = rest[0];
  const away = Math.hypot(toward[0] - port[0], toward[1] - port[1]) || 1;
  const barb: PointMm = [
    port[0] + ((toward[0] - port[0]) / away) * BARB_MM,
    port[1] + ((toward[1] - port[1]) / away) * BARB_MM,
  ];
  return rounded([barb, ...rest.slice(0, -1), beforeEdge(layout, hose), ...rest.slice(-1)]);
}

/** Hoses come in over the edge level. */
const beforeEdge = (layout: Layout, hose: HoseId): PointMm => [layout.edge.x + 110, layout.edge[hose]];

/** From a loose coupler on the mat to the gauge edge. */
export function restWay(layout: Layout, hose: CoupledHose): PointMm[] {
  const [x, y] = layout.mat.rest[hose];
  const [dx, dy] = barbTip(couplerForm(hose), REST_TURN_DEG, true);
  const edge: PointMm = [layout.edge.x, layout.edge[hose]];
  const barb: PointMm = [x + dx, y + dy];
  return rounded([barb, [barb[0] - 20, barb[1] + 10], [(barb[0] + edge[0]) / 2, edge[1] + 4], edge]);
}

/** From the can's tap, or the loose end on the mat, to the gauge edge. */
export function canWay(
  layout: Layout,
  outlet: PointMm | null,
  tiltDeg: number,
  restAt = layout.mat.rest.utility,
): PointMm[] {
  const edge: PointMm = [layout.edge.x, layout.edge.utility];
  if (outlet === null) {
    const [x, y] = restAt;
    const lower = y - layout.mat.rest.utility[1];
    const out: PointMm = [edge[0], edge[1] + lower];
    return rounded([[x - 20, y], [x - 60, y + 2], [out[0] + 40, out[1]], out]);
  }
  const angle = (tiltDeg * Math.PI) / 180;
  const out: PointMm = [outlet[0] + Math.cos(angle) * 34, outlet[1] + Math.sin(angle) * 34];
  const sag: PointMm = [out[0] + Math.cos(angle) * 10, Math.max(out[1], edge[1]) + 50];
  return rounded([outlet, out, sag, [(sag[0] + edge[0]) / 2, edge[1] + 58], edge]);
}
